using System.CommandLine;

namespace Companion.Server.CommandLine;

/// <summary>Everything that can be asked on the command line.</summary>
internal static class Commands
{
    /// <summary>The bare command, which runs the server, with the others below it.</summary>
    public static RootCommand Root()
    {
        var root = ServeCommand.Make();
        root.Add(ScanCommand.Make());
        root.Add(WhyCommand.Make());
        root.Add(ReadCommand.Make());
        root.Add(CheckCommand.Make());
        root.Add(VetCommand.Make());
        root.Add(RouteCommand.Make());
        root.Add(MakeCommand.Make());
        root.Add(SheetCommand.Make());
        root.Add(StillCommand.Make());
        root.Add(ThumbnailCommand.Make());
        root.Add(ShowsCommand.Make());
        root.Add(ReplayCommand.Make());
        root.Add(ChaptersCommand.Make());
        root.Add(ContactSheetCommand.Make());
        root.Add(DescriptionCommand.Make());
        root.Add(CaptionsCommand.Make());
        root.Add(RecapCommand.Make());
        root.Add(KeysCommand.Make());
        root.Add(AudienceCommand.Make());
        return root;
    }
}
