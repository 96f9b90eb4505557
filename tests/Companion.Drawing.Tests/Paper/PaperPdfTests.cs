using System.Text.RegularExpressions;
using Companion.Drawing.Paper;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Companion.Drawing.Tests.Paper;

/// <summary>Read by PdfPig, which shares no code with what wrote the files.</summary>
public sealed class PaperPdfTests
{
    public static TheoryData<string> Sizes => ["a4", "letter"];

    // ISO 216: A4 is 210 x 297 mm, 595.3 x 841.9 points. ANSI/ASME Y14.1: size A is 8.5 x 11 inches, 612 x 792 points.
    [Theory]
    [InlineData("a4", 595, 842, PageSize.A4)]
    [InlineData("letter", 612, 792, PageSize.Letter)]
    public void Every_page_has_the_size_of_the_paper(string size, double width, double height, PageSize name)
    {
        using var pdf = Read(Papers.Whole(PaperSize.Named(size)!));

        Assert.True(pdf.NumberOfPages > 1);
        Assert.All(pdf.GetPages(), page => Assert.Equal((width, height, name), (page.Width, page.Height, page.Size)));
    }

    [Fact]
    public void All_words_are_there_as_text_and_nothing_else_is()
    {
        var tile = Papers.OnBoard(Figure(withMarks: true));
        using var pdf = Read(Papers.Whole(PaperSize.A4));

        Assert.StartsWith(
            Bare(
                "Evening at the signal station",
                Papers.OnBoard(Figure(withMarks: false)), "What stands beside the board.", "And once more.",
                "0:25", "Singles in the top band", "1:05",
                "Words that run over more than a line, as those of a presenter do who has much to say about a board that says little.",
                "9", "The ninth step.",
                "10", "gate", "The tenth, with all there is.", "Breathe."),
            TextOf(pdf.GetPage(1)),
            StringComparison.Ordinal);
        Assert.EndsWith(
            Bare("• One point.", "• Another point.", "Evening at the signal station · A. Setter", "Page 1 of 3"),
            TextOf(pdf.GetPage(1)),
            StringComparison.Ordinal);
        Assert.Equal(
            Bare([.. Enumerable.Range(1, 6).SelectMany(number => new[] { $"{number} of seven", tile, "Below." }), "Evening at the signal station · A. Setter", "Page 2 of 3"]),
            TextOf(pdf.GetPage(2)));
        Assert.Equal(Bare("7 of seven", tile, "Below.", "Evening at the signal station · A. Setter", "Page 3 of 3"), TextOf(pdf.GetPage(3)));
    }

    // Six boards with a pattern on a page; where the words are too long they are set smaller, and longer ones take another page.
    [Theory]
    [InlineData(20, 7.6, 6)]
    [InlineData(118, 7, 6)]
    [InlineData(150, 7.6, 4)]
    public void Words_below_boards_take_the_room_that_the_boards_leave(int words, double size, int onFirst)
    {
        var figure = Figure(withMarks: false) with { Picture = Papers.First().Picture };
        Assert.NotNull(figure.Picture);
        using var pdf = Read(Papers.Of(new FigureGrid(3, 2, [.. Enumerable.Range(1, 6).Select(number =>
            new Tile($"Tile {number}", figure, string.Join(' ', Enumerable.Repeat("word", words))))])));
        var first = pdf.GetPage(1);

        Assert.Equal(onFirst == 6 ? 1 : 2, pdf.NumberOfPages);
        Assert.Equal(onFirst, Regex.Count(TextOf(first), "Tile"));
        Assert.Equal(onFirst * words, Regex.Count(TextOf(first), "word"));
        Assert.All(first.Letters.Where(letter => letter.Value is "w"), letter => Assert.Equal(size, letter.PointSize, 2));
        Assert.All(first.Letters, letter => Assert.True(letter.PointSize >= 6, $"{letter.Value} has {letter.PointSize} points"));
    }

    [Fact]
    public void The_file_says_what_it_is_called_who_made_it_and_in_which_language()
    {
        using var pdf = Read(Papers.Whole(PaperSize.A4) with { Title = "Küste → Hafen", Language = "de" });

        Assert.Equal("Küste → Hafen", pdf.Information.Title);
        Assert.Equal("A. Setter", pdf.Information.Author);
        Assert.Equal("(de)", pdf.Structure.Catalog.CatalogDictionary.Data["Lang"].ToString());
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes_and_a_date_only_if_it_has_one()
    {
        var document = Papers.Whole(PaperSize.A4);
        var dated = document with { Dated = new DateTimeOffset(2026, 11, 30, 20, 15, 0, TimeSpan.FromHours(1)) };
        using var undatedPdf = Read(document);
        using var datedPdf = Read(dated);

        Assert.Equal(PaperPdf.Write(document), PaperPdf.Write(Papers.Whole(PaperSize.A4)));
        Assert.Equal(PaperPdf.Write(dated), PaperPdf.Write(dated));
        Assert.Null(undatedPdf.Information.CreationDate);
        Assert.Equal("D:20261130191500", datedPdf.Information.CreationDate?[..16]);
        Assert.Equal(datedPdf.Information.CreationDate, datedPdf.Information.ModifiedDate);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_letter_stands_in_the_margin(string size)
    {
        using var pdf = Read(Papers.Whole(PaperSize.Named(size)!));

        Assert.All(pdf.GetPages(), page => Assert.All(page.Letters, letter =>
        {
            Assert.InRange(letter.BoundingBox.Left, Measures.Margin - 0.5, page.Width);
            Assert.InRange(letter.BoundingBox.Right, 0, page.Width - Measures.Margin + 0.5);
            Assert.InRange(letter.BoundingBox.Bottom, Measures.Margin - 0.5, page.Height);
            Assert.InRange(letter.BoundingBox.Top, 0, page.Height - Measures.Margin + 0.5);
        }));
    }

    // Common practice for print that is read by all; the boards of a grid have all candidates, and that of a step a pattern over them.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void No_letter_is_smaller_than_six_points(string size)
    {
        using var pdf = Read(Papers.Whole(PaperSize.Named(size)!));

        Assert.All(pdf.GetPages(), page => Assert.All(page.Letters, letter => Assert.InRange(letter.PointSize, 6, 20)));
    }

    [Fact]
    public void Letters_of_other_scripts_are_printed_too()
    {
        using var pdf = Read(Papers.Of(new Paragraph("Ångström Łódź Ελλάδα Москва ½ ≤ →")));

        Assert.Contains("ÅngströmŁódźΕλλάδαМосква½≤→", TextOf(pdf.GetPage(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_heading_that_would_stand_at_the_foot_of_a_page_goes_with_its_figure()
    {
        var filling = Enumerable.Repeat<PaperBlock>(new Paragraph("A line."), 26);
        using var pdf = Read(Papers.Of([.. filling, new Heading("The heading"), new Steps(1, [new("The step.", Figure: Papers.First())])]));

        Assert.DoesNotContain("Theheading", TextOf(pdf.GetPage(1)), StringComparison.Ordinal);
        Assert.StartsWith("Theheading1Thestep.", TextOf(pdf.GetPage(2)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_of_a_step_stand_on_one_page_with_its_figure()
    {
        var filling = Enumerable.Repeat<PaperBlock>(new Paragraph("A line."), 24);
        var words = string.Join(' ', Enumerable.Repeat("So one end of the chain is true in any case.", 12));
        using var pdf = Read(Papers.Of([.. filling, new Steps(1, [new(words, Figure: Papers.First())])]));

        Assert.DoesNotContain("chain", TextOf(pdf.GetPage(1)), StringComparison.Ordinal);
        Assert.StartsWith("1" + Bare(words), TextOf(pdf.GetPage(2)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_without_a_block_is_a_page_with_its_title()
    {
        using var pdf = Read(Papers.Of());

        Assert.Equal("TitleTitlePage1of1", TextOf(Assert.Single(pdf.GetPages())));
    }

    private static Figure Figure(bool withMarks) => Companion.Drawing.Paper.Figure.Of(Papers.Board, withMarks);

    private static PdfDocument Read(PaperDocument document) => PdfDocument.Open(PaperPdf.Write(document));

    // In the order in which it is drawn; lines end without a blank.
    private static string TextOf(Page page) => Bare(page.Text);

    private static string Bare(params string[] texts) =>
        string.Concat(string.Concat(texts).Where(letter => !char.IsWhiteSpace(letter)));
}
