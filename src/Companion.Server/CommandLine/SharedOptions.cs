using System.CommandLine;

namespace Companion.Server.CommandLine;

/// <summary>Options that several commands have.</summary>
internal static class SharedOptions
{
    /// <summary>The folder of the presenter's data.</summary>
    public static Option<string> Data() => new("--data")
    {
        Description = "The folder for keys, settings and the event log; by default in the user's local application data.",
        HelpName = "folder",
    };

    /// <summary>The server's port.</summary>
    public static Option<int?> Port() =>
        PlainOption.Number("--port", "The port; 5170 unless companion.json says otherwise, 0 for any that is free.", 0, 65535);
}
