using System.Text;
using Crossref.Cli;

// Part numbers and signs such as ± must survive a pipe whatever the console's code page is.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return CommandLine.Run(args, Console.Out, Console.Error, input: Console.In, atKeyboard: !Console.IsInputRedirected);
