using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Access;

public sealed class ReplacedKeyTests
{
    [Fact]
    public async Task Renewing_a_key_closes_the_pages_that_it_opened_and_no_others()
    {
        using var folder = new TemporaryFolder();
        var clock = new FakeTimeProvider(DateTimeOffset.UnixEpoch);
        await using var companion = await RunningCompanion.Start(
            folder.Path, builder => builder.Services.AddSingleton<TimeProvider>(clock));
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        var old = companion.Keys[AccessRole.CoHost];

        new KeyFile(DataFolder.Open(folder.Path)).Renew([AccessRole.CoHost]);
        clock.Advance(KeyWatch.Period);

        await coHost.IsClosed();
        Assert.Null(companion.Keys.Find(old.Reveal()));
        await presenter.Do("AllowCoHostOnAir", true);
        await using var again = await companion.OpenDesk(AccessRole.CoHost);
    }
}
