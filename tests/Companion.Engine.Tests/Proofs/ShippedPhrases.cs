using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>The phrase file that ships, read from the repository.</summary>
internal static class ShippedPhrases
{
    internal static string Json { get; } = File.ReadAllText(Path.Combine(Repository.Root, "configs", "phrases", "en.json"));

    internal static Phrases Phrases { get; } = Phrases.Parse(Json);

    internal static Wording Wording { get; } = new(Phrases);
}
