using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>The ladder file that ships, read from the repository.</summary>
internal static class ShippedLadder
{
    internal static string Json { get; } = File.ReadAllText(Path.Combine(Repository.Root, "configs", "ladder.json"));

    internal static Ladder Ladder { get; } = Ladder.Parse(Json);
}
