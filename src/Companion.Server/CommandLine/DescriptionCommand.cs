using System.CommandLine;
using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary><c>companion description</c>: the text below a video.</summary>
internal static class DescriptionCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var (show, options) = (ShowOptions.Show(), new LadderOptions());
        var output = new TextOutput();
        var command = new Command("description", "Writes the text below a show's video: title, credit, link and chapters.");
        command.Add(show);
        options.AddTo(command);
        output.AddTo(command);
        command.SetAction((asked, cancel) => Task.FromResult(output.Write(
            asked,
            () =>
            {
                var opened = ShowOptions.Open(DataFolder.Open(options.Data(asked)), asked.GetRequiredValue(show), asked.InvocationConfiguration.Error);
                var ladder = options.Whole(asked);
                return Description.Of(opened.Show, ShowChapters.Of(opened, ladder, ShippedFiles.Wording(ladder)));
            },
            cancel)));
        return command;
    }
}
