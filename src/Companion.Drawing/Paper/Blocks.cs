using System.Collections.Immutable;
using Companion.Drawing.Stills;

namespace Companion.Drawing.Paper;

/// <summary>A part of a document that takes the whole width of the page.</summary>
public abstract record PaperBlock
{
    private protected PaperBlock()
    {
    }
}

/// <summary>A heading under a rule; it stays on one page with what comes next.</summary>
/// <param name="Text">What it says.</param>
/// <param name="At">A clock before it; empty for none.</param>
/// <param name="Aside">Words at the right edge; empty for none.</param>
public sealed record Heading(string Text, string At = "", string Aside = "") : PaperBlock;

/// <summary>Running words.</summary>
/// <param name="Text">The words.</param>
public sealed record Paragraph(string Text) : PaperBlock;

/// <summary>A list with a dot before each item.</summary>
/// <param name="Items">The items.</param>
public sealed record Points(ImmutableArray<string> Items) : PaperBlock;

/// <summary>Numbered steps.</summary>
/// <param name="First">The number of the first one.</param>
/// <param name="Items">The steps in order.</param>
public sealed record Steps(int First, ImmutableArray<Step> Items) : PaperBlock;

/// <summary>A board by itself, as large as a third of the page is wide; what is said of it stands beside it.</summary>
/// <param name="Figure">The board.</param>
/// <param name="Words">What stands beside it, a paragraph each.</param>
public sealed record FigureWithWords(Figure Figure, ImmutableArray<string> Words) : PaperBlock;

/// <summary>Boards in rows and columns, as large as they can be. Where words below them are long, fewer go on a page.</summary>
/// <param name="Columns">How many stand side by side.</param>
/// <param name="Rows">How many rows go on a page.</param>
/// <param name="Tiles">The boards, row by row.</param>
public sealed record FigureGrid(int Columns, int Rows, ImmutableArray<Tile> Tiles) : PaperBlock;

/// <summary>A drawing across the page.</summary>
/// <param name="Artwork">What is drawn; it is made as wide as the page and keeps its proportions.</param>
public sealed record Drawn(Artwork Artwork) : PaperBlock;

/// <summary>What comes next begins on a page of its own.</summary>
public sealed record PageBreak : PaperBlock;
