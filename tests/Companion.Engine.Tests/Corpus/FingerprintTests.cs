using System.Text;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>
/// One number for everything that the ladder finds on the way through 100 puzzles of our own, so that a change of any rule, of
/// their order or of the generator shows, wanted or not.
/// </summary>
public sealed class FingerprintTests
{
    private const ulong Golden = 0xF07B_71E7_D37B_AE36;

    [Fact]
    public void Fingerprint()
    {
        var parts = Enumerable.Range(0, 100).AsParallel().AsOrdered().Select(seed => OfPuzzle((ulong)seed)).ToArray();
        var fingerprint = Hash(string.Join(' ', parts));

        Assert.True(
            fingerprint == Golden,
            $"What the ladder finds has changed. If it was meant to, put 0x{fingerprint:X16} in {nameof(FingerprintTests)}.{nameof(Golden)} " +
            "and say in the commit what changed and why; if not, this found a mistake.");
    }

    private static ulong OfPuzzle(ulong seed)
    {
        var text = new StringBuilder();
        foreach (var board in SolvingPath.Boards(Generator.Make(seed, new() { Symmetry = seed % 2 == 0 ? GridSymmetry.HalfTurn : null }).Board))
        {
            foreach (var deduction in Ladder.Whole.Scan(board))
                Append(text, deduction);
        }

        return Hash(text.ToString());
    }

    private static void Append(StringBuilder text, Deduction deduction)
    {
        text.Append(deduction).Append(" rests on ").Append(deduction.RestsOn);
        foreach (var link in deduction.Links)
            text.Append(' ').Append(link);
        text.Append('\n');
    }

    // FNV-1a, 64 bits (Fowler, Noll, Vo); the constants from memory, but any good mix would do.
    private static ulong Hash(string text)
    {
        var hash = 0xCBF2_9CE4_8422_2325;
        foreach (var unit in Encoding.UTF8.GetBytes(text))
            hash = (hash ^ unit) * 0x100_0000_01B3;
        return hash;
    }
}
