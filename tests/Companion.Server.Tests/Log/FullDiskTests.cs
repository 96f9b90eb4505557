using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Log;

public sealed class FullDiskTests
{
    private static readonly string[] Cells = ["r1c3"];

    [Fact]
    public async Task On_a_full_disk_entries_are_refused_plainly_and_nothing_that_was_acknowledged_is_lost()
    {
        await using var disk = await SmallDisk.Serve();
        await using var presenter = await OpenPage.Open(disk.Companion.Address, HubPaths.Presenter, disk.Companion.PresenterKey);
        var before = await Enter(presenter, 20);

        disk.Fill();
        var (acknowledged, refusal) = await EnterUntilRefused(presenter, before);
        Assert.Equal("This could not be written to the disk and was not done: free some space, then do it again.", refusal);

        // Whoever comes now is shown the session as it is, and whatever is tried again is refused again.
        await using (var late = await OpenPage.Open(disk.Companion.Address, HubPaths.Presenter, disk.Companion.PresenterKey))
            Assert.Equal(acknowledged, (await late.Sees("Desk", 0)).GetProperty("sequence").GetInt64());
        Assert.Equal(acknowledged, (await presenter.Ask("Undo")).Sequence);

        disk.Free();
        Assert.Equal(acknowledged + 20, await Enter(presenter, 20));

        using var kept = await disk.KillAndKeepLog();
        await using var next = await RunningCompanion.Start(kept.Path);
        Assert.Equal(acknowledged + 20, next.Session.State.Sequence);
    }

    [Fact]
    public async Task A_companion_that_is_stopped_on_a_full_disk_ends_as_ever()
    {
        await using var disk = await SmallDisk.Serve();
        disk.Fill();

        Assert.Equal(0, await disk.Stop());
    }

    [Fact]
    public async Task A_start_on_a_full_disk_says_so_and_the_way_out()
    {
        var (code, error) = await SmallDisk.ServeOnFull();

        Assert.NotEqual(0, code);
        Assert.Contains("is full: free some space, then start again.", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    private static async Task<long> Enter(OpenPage presenter, int count)
    {
        var sequence = 0L;
        for (var entry = 0; entry < count; entry++)
        {
            var reply = await presenter.Ask("ToggleCellMark", Cells, entry % 9 + 1);
            Assert.Null(reply.Refusal);
            sequence = reply.Sequence;
        }

        return sequence;
    }

    // What the log has room for in the pages that it has already is kept even now.
    private static async Task<(long Acknowledged, string Refusal)> EnterUntilRefused(OpenPage presenter, long before)
    {
        for (var acknowledged = before; ;)
        {
            var reply = await presenter.Ask("ToggleCellMark", Cells, 1);
            if (reply.Refusal is { } refusal)
            {
                Assert.Equal(acknowledged, reply.Sequence);
                return (acknowledged, refusal);
            }

            acknowledged = reply.Sequence;
        }
    }
}
