using System.Collections.Immutable;
using System.CommandLine;
using Companion.Drawing.Paper;

namespace Companion.Server.CommandLine;

/// <summary>The options of a command that prints: on which paper, and what stands on it besides.</summary>
internal sealed class PaperOptions
{
    private readonly Option<PaperSize> _size = PlainOption.Of("--paper", "The paper: a4 or letter; a4 by default.", PaperSize.Named, "a4 or letter");

    private readonly Option<string?> _title = new("--title") { Description = "The title on the first page and at the foot of each.", HelpName = "text" };

    private readonly Option<string?> _author = new("--author") { Description = "Who made it, at the foot of each page.", HelpName = "name" };

    /// <summary>The file to write as PDF.</summary>
    public Option<string?> Pdf { get; } = new("--pdf") { Description = "Write a PDF file to print, with pictures, instead of text.", HelpName = "file" };

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(Pdf);
        command.Add(_size);
        command.Add(_title);
        command.Add(_author);
    }

    /// <summary>Refuses what is only for paper where nothing is printed.</summary>
    /// <param name="isPrinted">Whether anything is.</param>
    /// <param name="asked">What was typed.</param>
    /// <param name="instead">The options that print, as in "--pdf or --html".</param>
    /// <exception cref="PlainException">A size, a title or an author is given, and nothing is printed.</exception>
    public void RefuseUnless(bool isPrinted, ParseResult asked, string instead)
    {
        if (!isPrinted && (asked.GetValue(_size) is not null || asked.GetValue(_title) is not null || asked.GetValue(_author) is not null))
            throw new PlainException($"--paper, --title and --author are for what is printed: add {instead}.");
    }

    /// <summary>A document on the paper that was asked for.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="title">Its title unless one was given.</param>
    /// <param name="blocks">What is on it.</param>
    public PaperDocument Document(ParseResult asked, string title, ImmutableArray<PaperBlock> blocks) =>
        new(asked.GetValue(_title) ?? title, asked.GetValue(_size) ?? PaperSize.A4, blocks) { Author = asked.GetValue(_author) ?? "" };
}
