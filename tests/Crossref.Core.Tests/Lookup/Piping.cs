namespace Crossref.Core.Tests.Lookup;

internal static class Piping
{
    public static TResult Pipe<T, TResult>(this T value, Func<T, TResult> into) => into(value);
}
