using Companion.Server.Tests.Running;
using Companion.Sight.Samples;

namespace Companion.Sight.Tests.Digits;

/// <summary>
/// The families that the network was never trained on. npm brings them into <c>.artifacts</c>; where it cannot, each test that needs
/// them fails and says so.
/// </summary>
internal static class HeldOutFonts
{
    private static readonly Lazy<string> Installed = new(Install);
    private static readonly Lazy<IReadOnlyList<FontFamily>> Read = new(() => FontFamily.In(Folder));

    /// <summary>Where their packages are.</summary>
    public static string Folder => Installed.Value;

    /// <summary>The families.</summary>
    public static IReadOnlyList<FontFamily> Families => Read.Value;

    private static string Install()
    {
        var folder = Repository.In(".artifacts", "fonts", "held-out");
        NpmPackages.Install(Repository.In("tests", "Companion.Sight.Training", "Fonts", "held-out"), folder);
        return folder;
    }
}
