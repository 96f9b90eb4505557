namespace Companion.Server.CommandLine;

/// <summary>Puzzles as they lie in a file or come through a pipe.</summary>
internal static class PuzzleFile
{
    // Of a grid that is written as rows: how many there are, and how long each is.
    private const int Rows = 9;

    /// <summary>Says what a command takes that reads any number of puzzles.</summary>
    public const string Layout =
        "A file: a puzzle a line, 81 characters, or nine lines of nine; what follows a tab is left out, empty lines and lines that begin with # are skipped. "
        + "A hyphen reads what is piped in, and one grid may be given itself.";

    /// <summary>Says what a command takes that is about one grid.</summary>
    public const string OneLayout =
        "The position: 81 characters row by row, or nine lines of nine; or a file that holds it, or a hyphen for what is piped in.";

    /// <summary>Opens a file.</summary>
    /// <param name="source">Its name, a hyphen for what is piped in, or a grid itself.</param>
    /// <exception cref="PlainException">It cannot be read.</exception>
    public static TextReader Open(string source)
    {
        if (source == "-")
            return Console.In;
        if (IsGrid(source))
            return new StringReader(source);
        try
        {
            return File.OpenText(source);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new PlainException(
                $"'{source}' is neither a grid of 81 characters nor a file that can be read: give one of these, or - for what is piped in.", fault);
        }
    }

    /// <summary>The one grid that is given.</summary>
    /// <param name="source">The grid, a file that holds it, or a hyphen for what is piped in.</param>
    /// <exception cref="PlainException">The file cannot be read, or holds none or several.</exception>
    public static string One(string source)
    {
        if (IsGrid(source))
            return source;
        using var reader = Open(source);
        return Grids(reader) switch
        {
            [] => throw Empty(source),
            [var (_, text)] => text,
            { Count: var count } => throw new PlainException($"{Where(source)} {count} puzzles and this command takes one: give that one alone."),
        };
    }

    /// <summary>Says that there is no puzzle where some were to be.</summary>
    /// <param name="source">The file, or a hyphen for what is piped in.</param>
    public static PlainException Empty(string source) => new($"{Where(source)} no puzzle: give one of 81 characters or nine lines of nine.");

    private static string Where(string source) => source == "-" ? "What is piped in has" : $"The file {source} has";

    // What has the cells of a grid is one; what has no letter was meant to be one, unless there is such a file.
    private static bool IsGrid(string source) => source != "-"
        && (Engine.BoardText.Read(source).Text.Length == Engine.Cell.Count || (!source.Any(char.IsLetter) && !File.Exists(source)));

    /// <summary>The puzzles with the number of their line from 1 on, or of their first one; read as they are asked for.</summary>
    /// <param name="reader">The open file.</param>
    public static IEnumerable<(int Line, string Text)> Lines(TextReader reader)
    {
        var rows = new List<(int Line, string Text)>();
        foreach (var line in Texts(reader))
        {
            if (line.Text.Length == Rows)
                rows.Add(line);
            if (line.Text.Length == Rows && rows.Count < Rows)
                continue;
            if (rows.Count == Rows)
                yield return (rows[0].Line, string.Concat(rows.Select(row => row.Text)));
            else
                foreach (var row in rows)
                    yield return row;
            rows.Clear();
            if (line.Text.Length != Rows)
                yield return line;
        }

        // Fewer than nine are no grid: each is named as such.
        foreach (var row in rows)
            yield return row;
    }

    private static IEnumerable<(int Line, string Text)> Texts(TextReader reader)
    {
        var number = 0;
        while (reader.ReadLine() is { } line)
        {
            number++;
            var text = line.Split('\t')[0];
            if (!string.IsNullOrWhiteSpace(text) && !text.StartsWith('#'))
                yield return (number, text);
        }
    }

    /// <summary>The puzzles of a file that holds either a puzzle a line or one grid of several lines.</summary>
    /// <param name="reader">The open file.</param>
    public static IReadOnlyList<(int Line, string Text)> Grids(TextReader reader)
    {
        var text = reader.ReadToEnd();
        var lines = Lines(new StringReader(text)).ToList();
        // A drawn row is at most some twenty characters wide.
        return lines.Count > 1 && lines.TrueForAll(line => line.Text.Length < Engine.Cell.Count / 2) ? [(1, text)] : lines;
    }
}
