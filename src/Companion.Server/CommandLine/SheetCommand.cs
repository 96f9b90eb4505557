using System.CommandLine;
using System.Text;
using System.Text.Json;
using Companion.Drawing.Paper;
using Companion.Server.Data;
using Companion.Server.Planning;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion sheet</c>: positions to practise a rule on.</summary>
internal static class SheetCommand
{
    private const int MostPositions = 60;
    private const ulong UsualSeed = 1;

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var rule = new Option<string>("--rule") { Description = "The rule to practise.", HelpName = "rule", Required = true };
        var count = PlainOption.Number("--count", $"How many positions; {PositionSearch.UsualCount} go on a page and are looked for by default.", 1, MostPositions);
        var from = new Option<string?>("--from")
        {
            Description = "Where to look: a stored show by its number or 'latest', a show file, or a file of puzzles or of positions of them; without "
                + $"it puzzles are made. Of a file of puzzles: {PuzzleFile.Layout}",
            HelpName = "show|file",
        };
        var seed = SeedOption.Make("For positions of puzzles of our own: another number gives others; 1 by default.");
        var without = new Option<bool>("--without-marks")
        {
            Description = "Write no candidates; only positions are taken on which nothing has to be known beyond the digits.",
        };
        var html = new Option<string?>("--html") { Description = "Write a page of HTML to print instead of text.", HelpName = "file" };
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object instead of text: rule, name and positions, each with grid (81 characters), gone (candidates that "
                + "earlier steps took out), source, places, removes, others (how many more of the rule are open), short, text (as it may be said) and proof (as it is printed).",
        };
        var (paper, options) = (new PaperOptions(), new LadderOptions());
        var command = new Command(
            "sheet",
            "Makes a sheet to practise a rule on: positions where the rule is open and nothing easier is, and after them the answers with "
            + "why they hold. Each is from another puzzle, as long as there are enough.")
        {
            rule, count, from, seed, without,
        };
        paper.AddTo(command);
        command.Add(html);
        command.Add(json);
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            paper.RefuseUnless(asked.GetValue(html) is not null || asked.GetValue(paper.Pdf) is not null, asked, "--pdf or --html");
            var whole = options.Whole(asked);
            var ladder = options.Cut(asked, whole);
            var wanted = FeatureOption.Read([asked.GetRequiredValue(rule)], ladder)[0];
            var files = OutputFile.AllOf((asked.GetValue(paper.Pdf), paper.Pdf.Name), (asked.GetValue(html), html.Name));
            var (withMarks, streams) = (!asked.GetValue(without), asked.InvocationConfiguration);
            var search = new PositionSearch(ladder, wanted, asked.GetValue(count), withMarks, streams);
            var (positions, areAllGood) = asked.GetValue(from) switch
            {
                null => (search.InPuzzlesOfOurOwn(asked.GetValue(seed) ?? UsualSeed, cancel), true),
                var name when ShowOptions.IsShow(name) =>
                    (search.InShow(ShowOptions.Open(DataFolder.Open(options.Data(asked)), name, streams.Error).Show, cancel), true),
                var name => search.InFile(name, cancel),
            };
            var wording = ShippedFiles.Wording(whole);
            var sheet = new PracticeSheet(wanted, positions, withMarks, wording);
            var document = paper.Document(asked, sheet.Title, sheet.Blocks);
            Func<byte[]>[] writers = [() => PaperPdf.Write(document), () => Encoding.UTF8.GetBytes(PaperHtml.Write(document))];
            var named = OutputFile.Named(files, writers);
            OutputFile.WriteAll(named, null, cancel);
            foreach (var (file, _) in named)
                file.Report(asked.GetValue(json) ? streams.Error : streams.Output);
            if (asked.GetValue(json))
                streams.Output.WriteLine(JsonSerializer.Serialize(SheetResult.Of(wanted, positions, sheet, wording), WireJson.Options));
            else if (named.IsEmpty)
                SheetResult.Of(wanted, positions, sheet, wording).Write(streams.Output);
            return Task.FromResult(areAllGood ? ExitCode.Fine : ExitCode.BadPuzzle);
        });
        return command;
    }
}
