using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Companion.Server.Data;
using Companion.Server.Planning;
using Companion.Server.Settings;
using Companion.Server.Shows;
using Companion.Server.Wire;
using Companion.Session.Views;

namespace Companion.Server.CommandLine;

/// <summary><c>companion shows</c>: lists, exports and imports shows.</summary>
internal static class ShowsCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var (json, data) = (new Option<bool>("--json") { Description = "A JSON array: id, title, puzzles, began, seconds, events, entries, hash, isLive, isImported." }, SharedOptions.Data());
        var command = new Command("shows", "Lists the shows that are kept.") { json, data };
        command.SetAction(asked => List(DataFolder.Open(asked.GetValue(data)), asked.GetValue(json), asked.InvocationConfiguration));
        command.Add(Export());
        command.Add(Import());
        command.Add(Offset());
        return command;
    }

    private static int List(DataFolder folder, bool asJson, InvocationConfiguration streams)
    {
        var library = new ShowLibrary(folder);
        var (shows, output) = (library.List(), streams.Output);
        if (asJson)
        {
            output.WriteLine(JsonSerializer.Serialize(shows, WireJson.Options));
            return ExitCode.Fine;
        }

        if (shows.IsEmpty)
            streams.Error.WriteLine($"No show was kept in {folder.Path} yet: play one, import one, or name another folder with --data.");
        foreach (var show in shows)
        {
            var title = show.Title.Length > 0 ? show.Title : "untitled";
            var others = show.Puzzles.Where(puzzle => puzzle != show.Title).ToList();
            var with = others.Count > 0 ? $" ({string.Join("; ", others)})" : "";
            var entries = show.Entries == 1 ? "entry" : "entries";
            var kind = show.IsLive ? library.IsOver(show.Id) ? ", ended" : ", goes on now" : show.IsImported ? ", imported" : "";
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{show.Id,4}  {show.Began.ToLocalTime():yyyy-MM-dd HH:mm}  {RunSheetText.Clock(show.Seconds),7}  {title}{with}: {show.Entries} {entries}{kind}  {show.Hash[..12]}"));
        }

        return ExitCode.Fine;
    }

    private static Command Export()
    {
        var (show, data) = (ShowOptions.Show(), SharedOptions.Data());
        var output = new Option<string>("--out") { Description = "The file to write, closed to other users.", HelpName = "file", Required = true };
        var command = new Command(
            "export",
            "Writes a show as one JSON file: every entry and mistake, what stood by or was on air, call-outs, notes, proofs, times and edited chapters. Of viewers it holds only about how many found a cell first.")
        {
            show, output, data,
        };
        command.SetAction((asked, cancel) =>
        {
            var file = OutputFile.At(asked.GetRequiredValue(output), output.Name, isPrivate: true);
            using var bytes = new MemoryStream();
            new ShowLibrary(DataFolder.Open(asked.GetValue(data))).Export(asked.GetRequiredValue(show), bytes);
            file.Write(bytes.ToArray(), cancel);
            file.Report(asked.InvocationConfiguration.Output);
            return Task.FromResult(ExitCode.Fine);
        });
        return command;
    }

    private static Command Import()
    {
        var file = new Argument<string>("file") { Description = "A show file. It is checked wholly before anything is kept." };
        var data = SharedOptions.Data();
        var command = new Command("import", "Keeps the show of a file among the others.") { file, data };
        command.SetAction(asked =>
        {
            var folder = DataFolder.Open(asked.GetValue(data));
            var id = new ShowLibrary(folder).Import(asked.GetRequiredValue(file), new Voice(ShippedFiles.Wording(LadderFile.Read(folder))));
            asked.InvocationConfiguration.Output.WriteLine($"Kept as show {id}.");
            return ExitCode.Fine;
        });
        return command;
    }

    private static Command Offset()
    {
        var show = ShowOptions.Kept();
        var seconds = new Argument<double>("seconds")
        {
            Description = "Above zero where the recording had started before its key was pressed, below zero where it started later.",
            CustomParser = result =>
            {
                if (double.TryParse(result.Tokens[0].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                    return number;
                result.AddError($"The offset is a number of seconds such as 3 or -1.5 and not '{result.Tokens[0].Value}'.");
                return 0;
            },
        };
        var data = SharedOptions.Data();
        var command = new Command("offset", "Corrects how much later in the recording everything is than it was keyed.") { show, seconds, data };
        command.SetAction(asked =>
        {
            new ShowLibrary(DataFolder.Open(asked.GetValue(data))).SetOffset(asked.GetRequiredValue(show), asked.GetValue(seconds));
            return ExitCode.Fine;
        });
        return command;
    }
}
