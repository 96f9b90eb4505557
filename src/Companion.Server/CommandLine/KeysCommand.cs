using System.CommandLine;
using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Pages;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary><c>companion keys</c>: the links with their keys, and new keys.</summary>
internal static class KeysCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var port = SharedOptions.Port();
        var data = SharedOptions.Data();
        var command = new Command("keys", "Prints the pages' links with their keys.") { port, data };
        command.SetAction(asked => Print(
            DataFolder.Open(asked.GetValue(data)), asked.GetValue(port), [], asked.InvocationConfiguration.Output));
        command.Add(Renew());
        return command;
    }

    private static Command Renew()
    {
        var port = SharedOptions.Port();
        var data = SharedOptions.Data();
        var role = new Argument<AccessRole?>("role")
        {
            Description = "Whose key: presenter, cohost, overlay or viewer; all of them where none is named.",
            Arity = ArgumentArity.ZeroOrOne,
            CustomParser = result =>
            {
                var name = result.Tokens[0].Value;
                if (Enum.TryParse<AccessRole>(name, ignoreCase: true, out var role) && !char.IsAsciiDigit(name[0]))
                    return role;
                result.AddError($"'{name}' has no key: name presenter, cohost, overlay or viewer.");
                return null;
            },
        };
        var command = new Command("renew", "Replaces keys; a running companion closes what was opened with the old ones.")
        {
            role,
            port,
            data,
        };
        command.SetAction(asked => Print(
            DataFolder.Open(asked.GetValue(data)),
            asked.GetValue(port),
            asked.GetValue(role) is { } one ? [one] : Enum.GetValues<AccessRole>(),
            asked.InvocationConfiguration.Output));
        return command;
    }

    private static int Print(DataFolder folder, int? port, AccessRole[] renewed, TextWriter output)
    {
        var settings = SettingsFeature.Read(folder, port);
        var file = new KeyFile(folder);
        var keys = renewed.Length > 0 ? file.Renew(renewed) : file.Load();
        output.WriteLine(new PageLinks(settings, role => keys[role]).Lines($"http://localhost:{settings.Port}", settings.Tls.Port));
        return ExitCode.Fine;
    }
}
