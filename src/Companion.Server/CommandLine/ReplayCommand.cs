using System.CommandLine;
using System.Globalization;
using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Shows;

namespace Companion.Server.CommandLine;

/// <summary><c>companion replay</c>: the link of a stage that plays a show.</summary>
internal static class ReplayCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var show = new Argument<string>("show") { Description = "The show: its number as 'companion shows' lists it, or 'latest'." };
        var speed = PlainOption.Of(
            "--speed", "How fast: 1 by default, 0.1 to 1000. Without it the replay waits for the key.", Speed.Read, "a number from 0.1 to 1000");
        var (port, data) = (SharedOptions.Port(), SharedOptions.Data());
        var command = new Command(
            "replay",
            "Prints the link of a stage that plays a show, for the running companion. Space plays and pauses, the arrows step, + and - set the speed. Nothing of it is on the live stage.")
        {
            show, speed, port, data,
        };
        command.SetAction(asked =>
        {
            var folder = DataFolder.Open(asked.GetValue(data));
            var name = asked.GetRequiredValue(show);
            if (new ShowLibrary(folder).Open(name).Id is null)
                throw new PlainException($"A show of a file is replayed when it is kept: 'companion shows import {name}' first.");
            var settings = SettingsFeature.Read(folder, asked.GetValue(port));
            var more = asked.GetValue(speed) is { } rate ? $"&speed={rate.Value.ToString(CultureInfo.InvariantCulture)}" : "";
            var key = new KeyFile(folder).Load()[AccessRole.Overlay];
            asked.InvocationConfiguration.Output.WriteLine($"http://localhost:{settings.Port}/stage?show={name}{more}#k={key.Reveal()}");
            return ExitCode.Fine;
        });
        return command;
    }

    private sealed record Speed(double Value)
    {
        public static Speed? Read(string text) =>
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is >= 0.1 and <= 1000
                ? new(value)
                : null;
    }
}
