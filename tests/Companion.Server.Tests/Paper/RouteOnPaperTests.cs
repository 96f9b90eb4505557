using System.Text.Json;
using System.Text.RegularExpressions;
using Companion.Server.Tests.CommandLine;
using Companion.Server.Tests.Running;
using SkiaSharp;
using UglyToad.PdfPig;

namespace Companion.Server.Tests.Paper;

public sealed class RouteOnPaperTests : IDisposable
{
    // The demo, of our own generator.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    private static readonly string[] Route = ["route", Demo, "--feature", "xy-wing", "--feature", "naked-pair", "--stop-at", "grouped-chain"];

    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("a4", "595 x 842 pts (A4)")]
    [InlineData("letter", "612 x 792 pts (letter)")]
    public async Task All_facts_of_the_run_sheet_are_on_paper_in_their_order(string size, string points)
    {
        var file = await Print("sheet.pdf", "--paper", size);
        var (_, json, _) = await Cli.Run([.. Route, "--json"]);
        using var sheet = JsonDocument.Parse(json);

        Assert.Equal(points, Poppler.Info(file)["Page size"]);
        var printed = Poppler.Text(file);
        var text = Bare(Regex.Replace(printed, @"Run sheet, \d+:\d\d\s*Page \d+ of \d+", ""));
        var at = 0;
        foreach (var passage in sheet.RootElement.GetProperty("passages").EnumerateArray())
        {
            Next(Clock(passage.GetProperty("at")) + passage.GetProperty("title").GetString() + Clock(passage.GetProperty("seconds")));
            var first = passage.GetProperty("first").GetInt32();
            foreach (var step in sheet.RootElement.GetProperty("steps").EnumerateArray().Skip(first - 1).Take(passage.GetProperty("last").GetInt32() - first + 1))
                Next($"{step.GetProperty("number")}{(step.GetProperty("isGate").GetBoolean() ? "gate" : "")}{step.GetProperty("text").GetString()}");
        }

        foreach (var point in sheet.RootElement.GetProperty("talkingPoints").EnumerateArray().Take(12))
            Next(point.GetProperty("text").GetString()!);
        Assert.Equal(sheet.RootElement.GetProperty("featured").EnumerateArray().Count(), Regex.Count(text, "candidatethatgoes"));

        void Next(string fact)
        {
            var found = text.IndexOf(Bare(fact), at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"'{fact}' is not printed after {text[..at][Math.Max(0, at - 80)..]}");
            at = found + Bare(fact).Length;
        }
    }

    [Fact]
    public async Task Every_font_is_embedded_as_a_subset_and_says_which_letters_its_glyphs_are()
    {
        var fonts = Poppler.Fonts(await Print("sheet.pdf"));

        Assert.Equal(2, fonts.Length);
        Assert.All(fonts, font => Assert.Matches(@"^[A-Z]{6}\+DejaVuSans\S* .* yes yes yes ", font));
        Assert.InRange(new FileInfo(_folder.In("sheet.pdf")).Length, 10_000, 150_000);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public async Task Nothing_is_drawn_in_the_margins(string size)
    {
        foreach (var page in Poppler.Grey(await Print("sheet.pdf", "--paper", size), 72))
        {
            using (page)
            {
                for (var y = 0; y < page.Height; y++)
                {
                    for (var x = 0; x < page.Width; x++)
                    {
                        var isMargin = x < 44 || y < 44 || x >= page.Width - 44 || y >= page.Height - 44;
                        Assert.True(!isMargin || page.GetPixel(x, y).Red == 255, $"{x}, {y}");
                    }
                }
            }
        }
    }

    // WCAG 2.2, 1.4.3: 4.5:1 for text, measured where each letter lies on a page printed in grey.
    [Fact]
    public async Task Without_colour_every_letter_of_the_words_stands_out_from_its_ground()
    {
        const int Dots = 288;
        var file = await Print("sheet.pdf");
        var pages = Poppler.Grey(file, Dots);
        using var pdf = PdfDocument.Open(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
        var measured = 0;
        foreach (var page in pdf.GetPages())
        {
            using var grey = pages[page.Number - 1];
            foreach (var letter in page.Letters.Where(letter => letter.PointSize >= 5 && char.IsLetterOrDigit(letter.Value[0])))
            {
                var (ink, ground) = Extremes(grey, letter.BoundingBox, page.Height, Dots / 72.0);
                Assert.True((ground + 0.05) / (ink + 0.05) >= 4.5, $"{letter.Value} on page {page.Number}");
                measured++;
            }
        }

        Assert.True(measured > 2000);
    }

    [Fact]
    public async Task The_same_call_writes_the_same_bytes()
    {
        var (one, other) = (await Print("one.pdf"), await Print("other.pdf"));

        Assert.Equal(await Bytes(one), await Bytes(other));
    }

    [Fact]
    public async Task Title_and_author_are_as_given()
    {
        var file = await Print("sheet.pdf", "--title", "Evening at the signal station", "--author", "A. Setter");

        Assert.Equal(("Evening at the signal station", "A. Setter"), (Poppler.Info(file)["Title"], Poppler.Info(file)["Author"]));
        Assert.StartsWith("Evening at the signal station\n", Poppler.Text(file), StringComparison.Ordinal);
        Assert.Matches(@"\nEvening at the signal station · A\. Setter\s+Page 1 of ", Poppler.Text(file));
    }

    [Fact]
    public async Task Notes_kept_with_the_puzzle_are_printed_with_their_steps()
    {
        await using (var companion = await RunningCompanion.Start(_folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Demo, "", "", "");
            // Step 1 of the route: a hidden single.
            await presenter.Do("NoteStep", "r3c2=6", "", "Greet the harbour first.");
            await presenter.Do("BeginShow", "");
            await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        }

        var file = await Print("sheet.pdf", "--notes", "--data", _folder.Path);

        Assert.Contains("So row three column two is six.\nGreet the harbour first.\n", Poppler.Text(file), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_no_notes_are_kept_it_is_said_and_the_sheet_comes_without()
    {
        var (code, output, error) = await Cli.Run([.. Route, "--html", "--notes", "--data", _folder.Path]);

        Assert.Equal(0, code);
        Assert.Contains($"No notes are kept with this puzzle in {_folder.Path}: the sheet has none.\n", error, StringComparison.Ordinal);
        Assert.Equal((await Cli.Run([.. Route, "--html", "--data", _folder.Path])).Output, output);
    }

    [Theory]
    [InlineData("--paper", "a3", "--paper takes a4 or letter and not 'a3'.")]
    [InlineData("--pdf", "no/such/folder.pdf", "The file no/such/folder.pdf cannot be written: name another one with --pdf.")]
    [InlineData("--pdf", "/", "The file / cannot be written: name another one with --pdf.")]
    public async Task What_cannot_be_printed_is_refused_in_one_sentence(string option, string value, string sentence)
    {
        var (code, output, error) = await Cli.Run([.. Route, option, value]);

        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith(sentence, error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private async Task<string> Print(string name, params string[] options)
    {
        var (code, output, error) = await Cli.Run([.. Route, "--pdf", _folder.In(name), .. options]);
        Assert.Equal((0, ""), (code, error));
        Assert.Equal($"Written to {_folder.In(name)}.", output.Trim());
        return _folder.In(name);
    }

    private static (double Ink, double Ground) Extremes(SKBitmap page, UglyToad.PdfPig.Core.PdfRectangle box, double height, double scale)
    {
        var (ink, ground) = (1.0, 0.0);
        for (var y = (int)((height - box.Top) * scale) - 1; y <= (height - box.Bottom) * scale + 1; y++)
        {
            for (var x = (int)(box.Left * scale) - 1; x <= box.Right * scale + 1; x++)
            {
                var luminance = Drawing.Colours.Colour.Linear(page.GetPixel(x, y).Red);
                (ink, ground) = (Math.Min(ink, luminance), Math.Max(ground, luminance));
            }
        }

        return (ink, ground);
    }

    private static string Clock(JsonElement seconds) => $"{(int)seconds.GetDouble() / 60}:{(int)seconds.GetDouble() % 60:00}";

    private static string Bare(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    private static Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
}
