using System.Xml.Linq;
using Companion.Drawing.Paper;
using Companion.Server.AfterShow;
using Companion.Server.Settings;
using Companion.Server.Tests.Paper;
using Companion.Server.Tests.Running;
using Companion.Session.AfterShow.Recaps;
using Companion.Session.Events;
using Companion.Session.Shows;

namespace Companion.Server.Tests.AfterShow;

public sealed class RecapTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    // Quick rules are enough to see what is open; the whole ladder is slow.
    private static Engine.Rules.Ladder Quick => MadeShow.Ladder.UpTo(new("xy-wing"));

    [Fact]
    public void Every_writer_says_what_the_model_has_and_hostile_words_stay_words()
    {
        var show = AiredShow.Of(3, AiredShow.Hostile);
        var words = Words(show);
        var puzzle = Assert.Single(words.Recap.Puzzles);
        var document = new PaperDocument(words.Title, PaperSize.A4, RecapPaper.Of(words, isPrivate: false));
        var html = PaperHtml.Write(document);
        File.WriteAllBytes(_folder.In("recap.pdf"), PaperPdf.Write(document));
        var (page, printed, markdown) = (
            XDocument.Parse(html["<!DOCTYPE html>\n".Length..]), Poppler.Text(_folder.In("recap.pdf")), RecapMarkdown.Of(words, isPrivate: false));

        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "link" or "iframe");
        Assert.All(page.Descendants("img"), image => Assert.StartsWith("data:image/", image.Attribute("src")!.Value, StringComparison.Ordinal));
        Assert.DoesNotContain("<script", markdown.Replace("\\<", "", StringComparison.Ordinal), StringComparison.Ordinal);
        var facts = words.Times.Concat(words.RemarksOf(puzzle)).Concat(words.OverlookedOf(puzzle)).Append(words.Summary).Append(words.CourseOf(puzzle)).ToList();
        Assert.True(facts.Count > 4);
        foreach (var fact in facts)
        {
            Assert.Contains(page.Descendants(), element => element.Value == fact);
            Assert.Contains(Letters(fact), Letters(printed), StringComparison.Ordinal);
            Assert.Contains(Letters(fact), Letters(markdown.Replace("\\", "", StringComparison.Ordinal)), StringComparison.Ordinal);
        }

        Assert.Equal(puzzle.Featured.Length + 1 + 1, page.Descendants("img").Count());
        Assert.Contains(AiredShow.Hostile, page.Root!.Element("body")!.Element("h1")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Mistakes_and_their_mending_are_for_the_presenter_alone()
    {
        var words = Words(AiredShow.WithSlip(out var wrong));
        var slip = Assert.Single(words.Recap.Puzzles[0].Slips);

        Assert.Equal((wrong, false, TimeSpan.FromSeconds(10), TimeSpan.FromSeconds(40)), (slip.Candidate, slip.IsStrike, slip.At, slip.MendedAt!.Value));
        Assert.Contains($"0:10 {wrong.Digit} in {wrong.Cell}: mended after 0:30.", RecapMarkdown.Of(words, isPrivate: true), StringComparison.Ordinal);
        Assert.DoesNotContain("mended", RecapMarkdown.Of(words, isPrivate: false), StringComparison.Ordinal);
        Assert.DoesNotContain(
            "mended",
            PaperHtml.Write(new("Recap", PaperSize.A4, RecapPaper.Of(words, isPrivate: false))),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_overlooked_was_open_all_the_time_and_easier_than_what_was_worked()
    {
        var show = AiredShow.Of(3);
        var puzzle = Words(show).Recap.Puzzles[0];
        Assert.All(puzzle.Overlooked, each =>
        {
            Assert.True(each.Entries >= 5 && each.To >= each.From);
            Assert.True(Quick.RungOf(each.Harder) > Quick.RungOf(each.Deduction.Rule));
            Assert.Contains(each.Deduction, Quick.Scan(each.Board, TestContext.Current.CancellationToken));
        });
        Assert.Equal(RecapMaker.ScansOf(show), puzzle.Curve.Length);
    }

    // The whole puzzle, an entry every ten seconds: when the ninth of a digit was there is counted from the entries.
    [Fact]
    public void The_digit_that_was_finished_first_is_told_with_its_time()
    {
        var show = MadeShow.Whole();
        var counts = new int[10];
        foreach (var given in MadeShow.Lanterns.Where(char.IsAsciiDigit))
            counts[given - '0']++;
        var ninth = show.Events.OfType<DigitPlaced>().First(placed => ++counts[placed.Digit.Value] == 9);
        var words = Words(show);
        var first = Assert.Single(words.Recap.Puzzles).FirstDigit;

        Assert.Equal((ninth.At - show.Began, ninth.Digit), first);
        Assert.Equal(
            $"{VideoClock.Of(ninth.At - show.Began)} The first digit to be finished was {ninth.Digit}.", words.RemarksOf(words.Recap.Puzzles[0])[^1]);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => RecapMaker.Of(AiredShow.Of(2), [], Quick, null, stop.Token));
    }

    public void Dispose() => _folder.Dispose();

    private static RecapWords Words(StoredShow show) => new(
        RecapMaker.Of(
            show,
            ShowChapters.Of(MadeShow.Opened(show), MadeShow.Ladder, MadeShow.Wording).Chapters,
            Quick,
            cancel: TestContext.Current.CancellationToken),
        MadeShow.Wording,
        ShippedFiles.Rarity());

    // Lines are broken and signs set by each in its own way.
    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit));
}
