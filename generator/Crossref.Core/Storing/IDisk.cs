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

    /// <summary>Writes a file that is not there yet; its folder must be there. The disk may have it later: see <see cref="Flush"/>.</summary>
    void Write(string path, ReadOnlySpan<byte> content);

    /// <summary>Waits until the disk has a file's content or, where the system can, a folder's names.</summary>
    void Flush(string path);

    /// <summary>Writes a file that is not there yet and waits until the disk has it.</summary>
    void WriteThrough(string path, ReadOnlySpan<byte> content)
    {
        Write(path, content);
        Flush(path);
    }

    /// <summary>Gives a file another name on the same disk, in one step; what has that name is replaced.</summary>
    void Move(string source, string target);

    /// <summary>Deletes a file if it is there.</summary>
    void Delete(string path);

    /// <summary>Makes a folder with those above it; one that is there is left alone.</summary>
    void MakeFolder(string path);

    /// <summary>Deletes a folder with everything in it, if it is there.</summary>
    void DeleteFolder(string path);
}
