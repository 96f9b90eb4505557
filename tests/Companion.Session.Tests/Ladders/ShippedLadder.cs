using Companion.Engine.Rules;

namespace Companion.Session.Tests.Ladders;

/// <summary>The ladder file that ships, read from the repository.</summary>
internal static class ShippedLadder
{
    public static string Json { get; } = File.ReadAllText(Path.Combine(Repository.Root, "configs", "ladder.json"));

    public static Ladder Ladder { get; } = Ladder.Parse(Json);
}
