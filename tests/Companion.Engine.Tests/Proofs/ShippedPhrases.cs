using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>The phrase file that ships, read from the repository.</summary>
internal static class ShippedPhrases
{
    internal static string Json { get; } = File.ReadAllText(Path.Combine(Root(), "configs", "phrases", "en.json"));

    internal static Phrases Phrases { get; } = Phrases.Parse(Json);

    internal static Wording Wording { get; } = new(Phrases);

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
                return folder.FullName;
        }

        throw new DirectoryNotFoundException($"No folder above {AppContext.BaseDirectory} holds Companion.sln.");
    }
}
