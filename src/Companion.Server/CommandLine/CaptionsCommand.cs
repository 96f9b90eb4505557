using System.CommandLine;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Session.AfterShow;
using Companion.Session.Views;

namespace Companion.Server.CommandLine;

/// <summary><c>companion captions</c>: the call-outs of a show as captions of its video.</summary>
internal static class CaptionsCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var (show, options) = (ShowOptions.Show(), new LadderOptions());
        var format = PlainOption.Of("--format", "srt or vtt; vtt by default.", text => text is "srt" or "vtt" ? text : null, "srt or vtt");
        var output = new TextOutput();
        var command = new Command("captions", "Writes the call-outs that were said in a show as captions of its video, SRT or WebVTT.");
        command.Add(show);
        options.AddTo(command);
        command.Add(format);
        output.AddTo(command);
        command.SetAction((asked, cancel) => Task.FromResult(output.Write(
            asked,
            () =>
            {
                var opened = ShowOptions.Open(DataFolder.Open(options.Data(asked)), asked.GetRequiredValue(show), asked.InvocationConfiguration.Error);
                var captions = Captions.Of(opened.Show, new Voice(ShippedFiles.Wording(options.Whole(asked))));
                if (captions.IsEmpty)
                    asked.InvocationConfiguration.Error.WriteLine("Nothing was on air or called out in this show: there are no captions.");
                return asked.GetValue(format) == "srt" ? CaptionFile.Srt(captions) : CaptionFile.WebVtt(captions);
            },
            cancel)));
        return command;
    }
}
