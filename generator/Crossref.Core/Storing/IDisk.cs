namespace Crossref.Core.Storing;

/// <summary>
/// The few things that are done to a disk when something is kept. One implementation is the real disk; tests have one
/// that fails where they want it to. Paths are those of the system.
/// </summary>
public interface IDisk
{
    /// <summary>Whether there is such a file.</summary>
    bool HasFile(string path);

    /// <summary>The content of a file.</summary>
    byte[] Read(string path);

    /// <summary>Writes a file that is not there yet and waits until the disk has it; its folder must be there.</summary>
    void WriteNew(string path, ReadOnlySpan<byte> content);

    /// <summary>Gives a file another name on the same disk, in one step; what has that name is replaced.</summary>
    void Move(string source, string target);

    /// <summary>Deletes a file if it is there.</summary>
    void Delete(string path);

    /// <summary>Makes a folder with those above it; one that is there is left alone.</summary>
    void MakeFolder(string path);

    /// <summary>Deletes a folder with everything in it, if it is there.</summary>
    void DeleteFolder(string path);
}
