using System.Collections.Immutable;
using System.Text;
using Companion.Engine;
using Companion.Session.AfterShow.Recaps;

namespace Companion.Server.AfterShow;

/// <summary>A recap as Markdown (CommonMark). Boards are given as text; words that come from elsewhere are escaped.</summary>
internal static class RecapMarkdown
{
    /// <summary>The text.</summary>
    /// <param name="words">The recap in words.</param>
    /// <param name="isPrivate">Whether the mistakes stand in it.</param>
    public static string Of(RecapWords words, bool isPrivate)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(Escaped(words.Title)).Append("\n\n").Append(Escaped(words.Summary)).Append('\n');
        foreach (var puzzle in words.Recap.Puzzles)
            Write(puzzle, words, isPrivate, text);
        Section(text, "##", "Where the time went", words.Times);
        return text.ToString();
    }

    private static void Write(RecapPuzzle puzzle, RecapWords words, bool isPrivate, StringBuilder text)
    {
        text.Append("\n## ").Append(Escaped(RecapWords.TitleOf(puzzle))).Append("\n\n");
        if (RecapWords.CreditOf(puzzle) is { Length: > 0 } credit)
            text.Append(Escaped(credit)).Append("\n\n");
        text.Append(Escaped(words.CourseOf(puzzle))).Append("\n\n    ").Append(BoardText.Write(puzzle.Start)).Append('\n');
        Section(text, "###", "Steps of the show", [.. words.FeaturedOf(puzzle).Select(each => $"{each.At} {each.Hint.Words.Spoken}")]);
        Section(text, "###", "What came true", words.RemarksOf(puzzle));
        Section(text, "###", "What viewers found first", RecapWords.FoundFirstOf(puzzle));
        Section(text, "###", "Overlooked", words.OverlookedOf(puzzle));
        if (isPrivate)
            Section(text, "###", "Mistakes and their mending", RecapWords.SlipsOf(puzzle));
        if (!puzzle.Curve.IsEmpty)
        {
            Section(text, "###", "How much was open",
            [
                $"Open deductions: {puzzle.Curve.Max(point => point.Deductions)} at most",
                $"Bivalue cells: {puzzle.Curve.Max(point => point.BivalueCells)} at most",
            ]);
        }
    }

    private static void Section(StringBuilder text, string level, string title, ImmutableArray<string> lines)
    {
        if (lines.IsEmpty)
            return;
        text.Append('\n').Append(level).Append(' ').Append(title).Append("\n\n");
        foreach (var line in lines)
            text.Append("- ").Append(Escaped(line)).Append('\n');
    }

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
