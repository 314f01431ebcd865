using System.Text;
using Crossref.Core.Checking;

namespace Crossref.Cli.Printing;

/// <summary>
/// Everything that is printed goes through here, so that no name of a file or text of a record, wherever it came from,
/// commands the screen: what nobody sees, or what moves the cursor or the text, becomes a question mark.
/// </summary>
internal sealed class ScreenWriter(TextWriter screen) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => screen.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write(value.ToString());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    /// <inheritdoc/>
    public override void Write(string? value)
    {
        // The end of a line may be a carriage return and a line feed; a carriage return alone goes back to its beginning.
        if (value is not null) screen.Write(HiddenCharacters.Masked(value.Replace("\r\n", "\n", StringComparison.Ordinal)));
    }

    /// <inheritdoc/>
    public override void WriteLine() => screen.WriteLine();

    /// <inheritdoc/>
    public override void WriteLine(string? value)
    {
        Write(value);
        WriteLine();
    }

    /// <inheritdoc/>
    public override void Flush() => screen.Flush();
}
