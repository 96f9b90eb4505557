using Companion.Engine.Proofs;
using Companion.Session.Views;

namespace Companion.Session.Tests;

/// <summary>The words that ship.</summary>
internal static class ShippedVoice
{
    internal static Voice Voice { get; } =
        new(new Wording(Phrases.Parse(File.ReadAllText(Path.Combine(Repository.Root, "configs", "phrases", "en.json")))));
}
