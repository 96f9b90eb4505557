using Companion.Session.Commands;
using Companion.Session.Scanning;

namespace Companion.Session.Tests.Scanning;

public sealed class TrailTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void An_entry_is_tagged_with_the_easiest_open_deduction_whose_conclusion_it_did()
    {
        _session.Scan();

        // 6 in r2c2 is a hidden single in two houses; 8 out of r1c8 and r2c8 is a pointing pair; 3 in r7c2 follows from
        // nothing.
        _session.Place("r2c2", 6).Scan();
        _session.Strike("r1c8 r2c8", 8).Scan();
        _session.Place("r7c2", 3).Scan();

        Assert.Equal(
            ["1 hidden-single 6 single r2c2 in b1 places r2c2=6", "2 pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8"],
            Carried());
    }

    [Fact]
    public void Entries_made_while_scans_were_cancelled_are_compared_with_the_last_scan()
    {
        _session.Scan();
        _session.Place("r2c2", 6).Place("r7c2", 7).Place("r1c6", 1).Scan();

        Assert.Equal(
            ["1 hidden-single 6 single r2c2 in b1 places r2c2=6", "3 hidden-single 1 single r1c6 in b2 places r1c6=1"],
            Carried());
    }

    [Fact]
    public void What_a_list_takes_out_carries_a_deduction_out_too()
    {
        _session.List("r2c8", "23468").Settle().Scan();
        _session.List("r2c8", "8").Scan();

        Assert.Equal(["6 pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8"], Carried());
    }

    [Fact]
    public void An_undo_carries_nothing_out_and_takes_nothing_back()
    {
        _session.Scan();
        _session.Place("r2c2", 6).Scan();
        _session.Undo().Scan();

        Assert.Equal(["1 hidden-single 6 single r2c2 in b1 places r2c2=6"], Carried());
    }

    [Fact]
    public void A_new_puzzle_begins_a_new_trail()
    {
        _session.Scan();
        _session.Place("r2c2", 6).Scan();
        _session.Do(new LoadPuzzle(Puzzles.Hard, "", "", "")).Scan();

        Assert.Empty(Carried());
    }

    [Fact]
    public void Only_the_last_entries_are_kept()
    {
        for (var round = 0; round < Trail.Length; round++)
        {
            _session.Scan();
            _session.Place("r2c2", 6).Scan();
            _session.Erase("r2c2").Scan();
        }

        _session.Place("r1c6", 1).Scan();
        Assert.Equal(Trail.Length, _session.Scanned!.Trail.Carried.Length);
        Assert.EndsWith("r1c6=1", Carried()[^1], StringComparison.Ordinal);
    }

    private string[] Carried() => [.. _session.Scanned!.Trail.Carried.Select(carried => $"{carried.Entry} {carried.Deduction}")];
}
