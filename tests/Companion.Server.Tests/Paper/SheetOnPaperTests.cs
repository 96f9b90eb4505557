using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Companion.Engine;
using Companion.Server.Tests.CommandLine;
using Companion.Server.Tests.Running;
using UglyToad.PdfPig;

namespace Companion.Server.Tests.Paper;

public sealed class SheetOnPaperTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("x-wing", 1, "a4", 1, 1)]
    [InlineData("xy-wing", 6, "a4", 1, 1)]
    [InlineData("xy-wing", 6, "letter", 1, 1)]
    [InlineData("alternating-inference-chain", 6, "letter", 1, 1)]
    [InlineData("naked-pair", 7, "letter", 2, 2)]
    [InlineData("hidden-pair", 12, "letter", 2, 2)]
    public async Task Six_positions_go_on_a_page_and_their_answers_on_one_after_them(string rule, int count, string paper, int positions, int answers)
    {
        var (file, sheet) = await Print(rule, count, "--paper", paper);
        using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
        var pages = pdf.GetPages().Select(page => Bare(page.Text)).ToList();
        var its = sheet.GetProperty("positions").EnumerateArray().ToList();

        Assert.Equal(positions + answers, pages.Count);
        for (var index = 0; index < count; index++)
        {
            var (position, board) = (its[index], BoardOf(its[index]));
            var onPage = pages[index / 6];
            var answerPage = pages[positions + index / 6];
            Assert.Contains($"{index + 1}{Written(board, withMarks: true)}", onPage, StringComparison.Ordinal);
            Assert.Contains(Bare(position.GetProperty("proof").GetString()!), answerPage, StringComparison.Ordinal);
            Assert.DoesNotContain(Bare(position.GetProperty("proof").GetString()!), onPage, StringComparison.Ordinal);
        }

        Assert.Equal(
            its.Count(position => position.GetProperty("others").GetInt32() > 0),
            pages.Sum(page => Regex.Count(page, "moreofthisrule(is|are)openhere")));
        Assert.Equal(paper == "a4" ? (595, 842) : (612, 792), (pdf.GetPage(1).Width, pdf.GetPage(1).Height));
        Assert.All(Poppler.Fonts(file), font => Assert.Contains(" yes yes yes ", font, StringComparison.Ordinal));
    }

    // Common practice for print that is read by all. The words of chains are long, and leave less room for the boards.
    [Theory]
    [InlineData("xy-wing", "a4")]
    [InlineData("xy-wing", "letter")]
    [InlineData("alternating-inference-chain", "a4")]
    [InlineData("alternating-inference-chain", "letter")]
    public async Task No_letter_is_smaller_than_six_points(string rule, string paper)
    {
        var (file, _) = await Print(rule, 6, "--paper", paper);
        using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));

        Assert.All(pdf.GetPages(), page => Assert.All(page.Letters, letter => Assert.InRange(letter.PointSize, 6, 20)));
    }

    [Fact]
    public async Task Without_marks_the_digits_alone_are_printed()
    {
        var (file, sheet) = await Print("naked-pair", 2, "--without-marks");
        using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));

        Assert.All(sheet.GetProperty("positions").EnumerateArray(), position =>
            Assert.Contains(Written(BoardOf(position), withMarks: false), Bare(pdf.GetPage(1).Text), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public async Task Nothing_is_drawn_in_the_margins(string paper)
    {
        var (file, _) = await Print("xy-wing", 6, "--paper", paper);
        foreach (var page in Poppler.Grey(file, 72))
        {
            using (page)
            {
                // Pixel by pixel it takes half a minute.
                var (pixels, width, height) = (page.Pixels, page.Width, page.Height);
                var drawn = Enumerable.Range(0, pixels.Length).Where(place => pixels[place].Red < 255
                    && (place % width < 44 || place / width < 44 || place % width >= width - 44 || place / width >= height - 44));
                Assert.Empty(drawn);
            }
        }
    }

    [Fact]
    public async Task The_page_of_html_has_the_same_positions_and_answers_and_fetches_nothing()
    {
        var (_, sheet) = await Print("xy-wing", 3, "--html", _folder.In("sheet.html"));
        var page = await File.ReadAllTextAsync(_folder.In("sheet.html"), TestContext.Current.CancellationToken);
        var figures = XDocument.Parse(page).Root!.Descendants("figure").ToList();
        var its = sheet.GetProperty("positions").EnumerateArray().ToList();

        Assert.Equal(6, figures.Count);
        Assert.Equal(its.Select(position => position.GetProperty("grid").GetString()), figures.Take(3).Select(figure => figure.Element("img")!.Attribute("alt")!.Value));
        Assert.Equal(its.Select(position => position.GetProperty("short").GetString()), figures.Skip(3).Select(figure => figure.Element("img")!.Attribute("alt")!.Value));
        Assert.All(its.Zip(figures.Skip(3)), pair => Assert.Equal(pair.First.GetProperty("proof").GetString()!, pair.Second.Element("p")!.Value));
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);
    }

    // A rule that is so rare in puzzles of our own that the search takes minutes. Ctrl+C does what TERM does.
    [Theory]
    [InlineData("-TERM", 2)]
    [InlineData("-KILL", 137)]
    public async Task Stopped_or_killed_while_it_looks_it_leaves_the_folder_as_it_was(string signal, int code)
    {
        await File.WriteAllTextAsync(_folder.In("sheet.pdf"), "of last week", TestContext.Current.CancellationToken);

        var (exitCode, said) = await CompanionProcess.Interrupt(
            signal, "sheet", "--rule", "jellyfish", "--count", "60", "--pdf", _folder.In("sheet.pdf"), "--html", _folder.In("sheet.html"));

        Assert.Equal(code, exitCode);
        Assert.Equal([_folder.In("sheet.pdf")], Directory.GetFileSystemEntries(_folder.Path));
        Assert.Equal("of last week", await File.ReadAllTextAsync(_folder.In("sheet.pdf"), TestContext.Current.CancellationToken));
        Assert.StartsWith("Looking for positions: ", said, StringComparison.Ordinal);
        Assert.True(signal == "-KILL" || said.EndsWith("Stopped; no file was written.\n", StringComparison.Ordinal), said);
    }

    public void Dispose() => _folder.Dispose();

    private async Task<(string File, JsonElement Sheet)> Print(string rule, int count, params string[] options)
    {
        string[] words = ["sheet", "--rule", rule, "--count", $"{count}", .. options];
        var (code, output, error) = await Cli.Run([.. words, "--pdf", _folder.In("sheet.pdf"), "--json"]);
        Assert.Equal(0, code);
        Assert.StartsWith($"Written to {_folder.In("sheet.pdf")}.\n", error, StringComparison.Ordinal);
        using var sheet = JsonDocument.Parse(output);
        return (_folder.In("sheet.pdf"), sheet.RootElement.Clone());
    }

    private static Board BoardOf(JsonElement position) => Board.Parse(position.GetProperty("grid").GetString()!).Remove(
        CandidateSet.Of([.. position.GetProperty("gone").EnumerateArray().Select(one =>
            Candidate.Parse($"{one.GetProperty("cell").GetString()}={one.GetProperty("digit").GetInt32()}"))]));

    // As a board is drawn: cell by cell, and then the numbers of rows and columns.
    private static string Written(Board board, bool withMarks) => string.Concat(
        CellSet.All.Select(cell => board.DigitAt(cell)?.ToString() ?? (withMarks ? string.Concat(board[cell]) : ""))
            .Concat(Enumerable.Range(1, 9).Select(number => $"r{number}c{number}")));

    private static string Bare(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
