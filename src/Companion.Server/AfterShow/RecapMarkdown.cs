using System.Collections.Immutable;
using System.Text;
using Companion.Drawing.Paper;
using Companion.Drawing.Stills;
using Companion.Engine;
using Companion.Session.AfterShow.Recaps;

namespace Companion.Server.AfterShow;

/// <summary>
/// A recap as Markdown (CommonMark). Boards are given as text; pictures are files of their own that stand beside it. Words that come
/// from elsewhere are escaped.
/// </summary>
internal sealed class RecapMarkdown
{
    private readonly StringBuilder _text = new();
    private readonly List<(string Name, Func<byte[]> Content)> _pictures = [];
    private readonly RecapWords _words;
    private readonly string? _stem;

    private RecapMarkdown(RecapWords words, string? stem) => (_words, _stem) = (words, stem);

    /// <summary>The text, and the pictures that it links to.</summary>
    /// <param name="words">The recap in words.</param>
    /// <param name="isPrivate">Whether the mistakes stand in it.</param>
    /// <param name="stem">What the names of its pictures begin with; null for none.</param>
    /// <returns>The text, and each picture with the name of its file and what makes it.</returns>
    public static (string Text, ImmutableArray<(string Name, Func<byte[]> Content)> Pictures) Of(RecapWords words, bool isPrivate, string? stem = null)
    {
        var markdown = new RecapMarkdown(words, stem);
        markdown.Write(isPrivate);
        return (markdown._text.ToString(), [.. markdown._pictures]);
    }

    private void Write(bool isPrivate)
    {
        _text.Append("# ").Append(Escaped(_words.Title)).Append("\n\n").Append(Escaped(_words.Summary)).Append('\n');
        foreach (var puzzle in _words.Recap.Puzzles)
            Write(puzzle, isPrivate);
        Section("##", "Talking points", _words.Said);
        Section("##", "Where the time went", _words.Times);
    }

    private void Write(RecapPuzzle puzzle, bool isPrivate)
    {
        _text.Append("\n## ").Append(Escaped(RecapWords.TitleOf(puzzle))).Append("\n\n");
        if (RecapWords.CreditOf(puzzle) is { Length: > 0 } credit)
            _text.Append(Escaped(credit)).Append("\n\n");
        _text.Append(Escaped(_words.CourseOf(puzzle))).Append("\n\n    ").Append(BoardText.Write(puzzle.Start)).Append('\n');
        foreach (var (title, steps) in _words.StepsOf(puzzle))
            Write(title, steps);
        Section("###", "What came true", _words.RemarksOf(puzzle));
        Section("###", "What viewers found first", RecapWords.FoundFirstOf(puzzle));
        Section("###", "Overlooked", _words.OverlookedOf(puzzle));
        if (isPrivate)
            Section("###", "Mistakes and their mending", RecapWords.SlipsOf(puzzle));
        if (puzzle.Curve.IsEmpty)
            return;
        Section("###", "How much was open",
        [
            $"Open deductions: {puzzle.Curve.Max(point => point.Deductions)} at most",
            $"Bivalue cells: {puzzle.Curve.Max(point => point.BivalueCells)} at most",
        ]);
        var chart = RecapPaper.ChartOf(puzzle, _words.Recap.Length);
        Picture("", chart.Description, "svg", () => SvgImage.Of(chart));
    }

    private void Write(string title, ImmutableArray<RecapStep> steps)
    {
        Head("###", title);
        foreach (var step in steps)
        {
            _text.Append("- ").Append(Escaped($"{step.At} {step.Words}")).Append('\n');
            Picture("  ", step.Figure.Alternative, "png", () => FigureImage.InStep(step.Figure));
        }
    }

    // A link is an address: what may not stand in one is written as its code (RFC 3986, 2.1).
    private void Picture(string indent, string alternative, string form, Func<byte[]> content)
    {
        if (_stem is null)
            return;
        var name = $"{_stem}-{_pictures.Count + 1}.{form}";
        _pictures.Add((name, content));
        _text.Append('\n').Append(indent).Append("![").Append(Escaped(alternative)).Append("](").Append(Uri.EscapeDataString(name)).Append(")\n");
    }

    private void Section(string level, string title, ImmutableArray<string> lines)
    {
        if (lines.IsEmpty)
            return;
        Head(level, title);
        foreach (var line in lines)
            _text.Append("- ").Append(Escaped(line)).Append('\n');
    }

    private void Head(string level, string title) => _text.Append('\n').Append(level).Append(' ').Append(title).Append("\n\n");

    // CommonMark 0.31.2, 2.4: every ASCII punctuation sign may be escaped. Those that begin something of their own are; a link stays one.
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var letter in text.ReplaceLineEndings(" "))
        {
            if (letter is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '|' or '!' or '&' or '~')
                escaped.Append('\\');
            escaped.Append(letter);
        }

        return escaped.ToString();
    }
}
