using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Companion.Drawing.Paper;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Data;
using Companion.Server.Planning;
using Companion.Server.Settings;
using Companion.Server.Wire;

namespace Companion.Server.CommandLine;

/// <summary><c>companion route</c>: the run sheet of a puzzle.</summary>
internal static class RouteCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var position = new PositionOptions();
        var featured = FeatureOption.Make(
            "A rule that the route is to show, with :early or :late after its name for a time of its own, as in xy-wing:early; may be given several times.");
        var early = new Option<bool>("--early") { Description = "Show the featured rules as soon as they are open where they say nothing else; as late as they can be by default." };
        var words = PlainOption.Number("--words-per-minute", "How fast you speak; 150 by default.", SpeakingRate.Slowest, SpeakingRate.Fastest);
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object: grid, isComplete, seconds, passages (title, first, last, at, seconds), steps (number, at, seconds, "
                + "rule, name, places, removes, isGate, isFeatured, short, text), featured (rule, name, step, others: cells, places, removes, "
                + "fromStep, toStep), talkingPoints (step, oneIn, text, facts; the rarest first) and with --notes notes, one for each step. A gate is a "
                + "step beside which nothing as easy is open, and with more than full houses left to do. The facts of a talking point are kind, "
                + "cells (of a wing the pivot first), digits, houses, rule, count and outOf: so many cells or steps, out of so many steps; of "
                + "needs, so many puzzles of those counted; of one-in-the-way, for so many steps the candidate alone was in the way.",
        };
        var html = new Option<bool>("--html") { Description = "A page of HTML to print, with a picture of each featured step." };
        var notes = new Option<bool>("--notes") { Description = "Also the notes that the data folder keeps with the puzzle." };
        var paper = new PaperOptions();
        var options = new LadderOptions();
        var command = new Command(
            "route", "Plans the way through a puzzle in the order in which a person would work, with a running clock: the run sheet.");
        position.AddTo(command);
        command.Add(featured);
        command.Add(early);
        command.Add(words);
        command.Add(json);
        command.Add(html);
        paper.AddTo(command);
        command.Add(notes);
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            if (asked.GetValue(json) && asked.GetValue(html))
                throw new PlainException("--json and --html both write what the command gives out: ask for one of them, with --pdf if you like.");
            if (asked.GetValue(early) && asked.GetValue(featured)!.Length == 0)
                throw new PlainException("--early is about featured rules: name one with --feature.");
            paper.RefuseUnless(asked.GetValue(html) || asked.GetValue(paper.Pdf) is not null, asked, "--pdf or --html");
            var whole = options.Whole(asked);
            var wording = ShippedFiles.Wording(whole);
            var ladder = options.Cut(asked, whole);
            var features = FeatureOption.ReadTimed(asked.GetValue(featured)!, ladder, asked.GetValue(early) ? Timing.Early : Timing.Late);
            var rate = SpeakingRate.Of(asked.GetValue(words) ?? SpeakingRate.Usual);
            var file = asked.GetValue(paper.Pdf) is { } path ? OutputFile.At(path, paper.Pdf.Name) : null;
            var folder = asked.GetValue(notes) ? DataFolder.Open(options.Data(asked)) : null;
            return Task.FromResult(Run(
                position.Read(asked),
                board => RunPlan.From(board, ladder, features, cancel: cancel),
                (plan, streams) =>
                {
                    var sheet = RunSheet.Of(plan, wording, rate, ShippedFiles.Rarity());
                    var noted = NotesOfRoute.For(plan, folder, streams.Error);
                    file?.Write(PaperPdf.Write(OnPaper(sheet, plan, noted)), cancel);
                    if (asked.GetValue(json))
                        streams.Output.WriteLine(Json(sheet, folder is null ? null : noted));
                    else if (asked.GetValue(html))
                        streams.Output.WriteLine(PaperHtml.Write(OnPaper(sheet, plan, noted)));
                    else if (file is null)
                        RunSheetText.Write(sheet, noted, streams.Output);
                    if (file is not null)
                        file.Report(asked.GetValue(json) || asked.GetValue(html) ? streams.Error : streams.Output);
                },
                asked.InvocationConfiguration));

            PaperDocument OnPaper(RunSheet sheet, RunPlan plan, ImmutableArray<string> noted) => paper.Document(
                asked, RunSheetPaper.TitleOf(sheet), RunSheetPaper.Of(sheet, plan, noted, wording));
        });
        return command;
    }

    private static string Json(RunSheet sheet, ImmutableArray<string>? notes)
    {
        var json = JsonSerializer.SerializeToNode(sheet, WireJson.Options)!.AsObject();
        if (notes is { } noted)
            json["notes"] = JsonSerializer.SerializeToNode(noted, WireJson.Options);
        return json.ToJsonString(WireJson.Options);
    }

    private static int Run(
        GridDraft draft, Func<Board, RunPlan> makePlan, Action<RunPlan, InvocationConfiguration> write, InvocationConfiguration streams)
    {
        var reading = Puzzle.Read(draft);
        if (!reading.IsGood)
            return PositionOptions.Refuse(draft, reading.Faults, streams.Error);
        using var work = LongWork.Begin(streams, "Planning the route");
        var plan = makePlan(reading.Value.Board);
        write(plan, streams);
        return plan.IsComplete ? ExitCode.Fine : ExitCode.BadPuzzle;
    }
}
