namespace Companion.Engine.Tests.Rules;

/// <summary>The rules that suppose something and give one of the shortest ways on from there: see <see cref="LiteralNetTests"/>.</summary>
internal static class NetRules
{
    public static IReadOnlyList<string> All { get; } = ["forcing-net", "nested-forcing-net"];
}
