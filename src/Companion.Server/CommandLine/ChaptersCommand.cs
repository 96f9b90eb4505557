using System.CommandLine;
using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Session.Chapters;

namespace Companion.Server.CommandLine;

/// <summary><c>companion chapters</c>: the chapters of a show.</summary>
internal static class ChaptersCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var show = ShowOptions.Show();
        var format = PlainOption.Of(
            "--format",
            "list (for a description; by default), webvtt, ffmetadata, json (JSON chapters 1.2.0) or edl (markers for a cutting program).",
            ChapterFormat.Named,
            "list, webvtt, ffmetadata, json or edl");
        var rate = PlainOption.Of(
            "--fps",
            "The frames a second of the video, for edl: 25 by default.",
            name => FrameRate.All.FirstOrDefault(rate => rate.Name == name),
            $"one of {string.Join(", ", FrameRate.All.Select(rate => rate.Name))}");
        var (output, data) = (new TextOutput(), SharedOptions.Data());
        var command = new Command("chapters", "Writes the chapters of a show, as they were edited or as its log tells them.") { show, format, rate, data };
        output.AddTo(command);
        command.SetAction((asked, cancel) => Task.FromResult(output.Write(
            asked,
            () =>
            {
                var (folder, error) = (DataFolder.Open(asked.GetValue(data)), asked.InvocationConfiguration.Error);
                var opened = ShowOptions.Open(folder, asked.GetRequiredValue(show), error);
                var ladder = LadderFile.Read(folder);
                var chapters = ShowChapters.Of(opened, ladder, ShippedFiles.Wording(ladder));
                foreach (var broken in ChapterRules.Broken(chapters.Chapters, chapters.Length))
                    error.WriteLine(broken);
                return (asked.GetValue(format) ?? ChapterFormat.All[0]).Write(chapters, asked.GetValue(rate) ?? FrameRate.All[0]);
            },
            cancel)));
        return command;
    }
}
