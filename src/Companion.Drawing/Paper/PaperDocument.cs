using System.Collections.Immutable;

namespace Companion.Drawing.Paper;

/// <summary>What is to be printed: data only. <see cref="PaperPdf"/> and <see cref="PaperHtml"/> turn it into files.</summary>
/// <param name="Title">The title, which heads the first page and stands at the foot of each.</param>
/// <param name="Size">The paper.</param>
/// <param name="Blocks">What is on it, in reading order.</param>
public sealed record PaperDocument(string Title, PaperSize Size, ImmutableArray<PaperBlock> Blocks)
{
    /// <summary>Who made it, for the file's properties and the foot of each page; empty where nobody is named.</summary>
    public string Author { get; init; } = "";

    /// <summary>The language of its words, as BCP 47 writes it; English by default.</summary>
    public string Language { get; init; } = "en";

    /// <summary>
    /// The date that the file carries as that of its making and of its last change. None by default: no clock is asked, so that the
    /// same document always gives the same bytes.
    /// </summary>
    public DateTimeOffset? Dated { get; init; }
}
