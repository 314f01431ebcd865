@echo off
rem Brings this stick and the library of this PC together. The tool is the one in the folder Crossref of this PC,
rem called by its full path: nothing that lies on the stick is run.
setlocal
set "STICK=%~dp0."
set "SHOP=%CROSSREF_HOME%"
if "%SHOP%"=="" set "SHOP=%USERPROFILE%\Crossref"
set "TOOL=%SHOP%\crossref.exe"
if not exist "%TOOL%" goto notool
cd /d "%SHOP%" || goto notool
"%TOOL%" verify "%STICK%" || goto damaged
"%TOOL%" combine "%STICK%" || goto stopped
"%TOOL%" build || goto stopped
"%TOOL%" pack "%STICK%" --replace || goto stopped
echo.
echo Done. This PC and the stick now hold the same. Eject the stick before you pull it.
pause
exit /b 0
:notool
echo There is no tool on this PC yet: %TOOL% is missing.
echo START-HERE.html on the stick says how to set up a PC.
pause
exit /b 2
:damaged
echo.
echo Stopped: the stick is not as it was packed; the files are named above. Nothing was changed.
echo If somebody changed them on purpose, open a command window in %SHOP% and type:
echo   crossref combine "%STICK%" --dry-run
pause
exit /b 1
:stopped
echo.
echo Stopped. Read the lines above; when it is mended, start this again. Nothing is lost.
pause
exit /b 1
