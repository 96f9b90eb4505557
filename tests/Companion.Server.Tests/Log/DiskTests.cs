using Companion.Server.Tests.Running;
using Companion.Session.State;
using Microsoft.Data.Sqlite;

namespace Companion.Server.Tests.Log;

public sealed class DiskTests
{
    [Fact]
    public async Task An_entry_that_the_disk_refuses_is_refused_plainly_and_the_session_goes_on()
    {
        using var folder = new TemporaryFolder();
        await using var companion = await RunningCompanion.Start(folder.Path);
        await using var presenter = await companion.OpenDesk();
        await using var blocker = new SqliteConnection($"Data Source={folder.In("events.db")};Pooling=False");
        await blocker.OpenAsync(TestContext.Current.CancellationToken);
        SessionState before;
        await using (var other = await blocker.BeginTransactionAsync(TestContext.Current.CancellationToken))
        {
            before = companion.Session.State;
            var reply = await presenter.Ask("AllowCoHostOnAir", true);

            Assert.Contains("could not be written to the disk", reply.Refusal, StringComparison.Ordinal);
            Assert.Same(before, companion.Session.State);
            Assert.Equal(before.Sequence, reply.Sequence);
        }

        await presenter.Do("AllowCoHostOnAir", true);
        Assert.Equal(before.Sequence + 1, companion.Session.State.Sequence);
    }
}
