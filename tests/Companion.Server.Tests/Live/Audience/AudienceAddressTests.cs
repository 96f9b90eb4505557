using System.Net;
using Companion.Server.Access;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live.Audience;

/// <summary>The audience's page behind a proxy or a tunnel, at an address of its own.</summary>
public sealed class AudienceAddressTests
{
    [Fact]
    public async Task The_link_that_is_copied_is_of_the_address_in_the_settings_and_that_host_is_answered_to()
    {
        await using var companion = await RunningCompanion.Start(
            settings: new() { Port = 0, Audience = new() { Address = "https://hints.example/" } });
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("AudienceLink");

        var link = (await presenter.Sees("AudienceLink", _ => true)).GetString();
        Assert.Equal($"https://hints.example/audience#k={companion.Keys[AccessRole.Viewer].Reveal()}", link);
        Assert.True((await presenter.Sees("Door", _ => true)).GetProperty("isForOthers").GetBoolean());
        Assert.Equal(HttpStatusCode.OK, await Asked(companion, "hints.example"));
        Assert.Equal(HttpStatusCode.BadRequest, await Asked(companion, "other.example"));
    }

    [Theory]
    [InlineData("hints.example")]
    [InlineData("ftp://hints.example")]
    [InlineData("https://hints.example/audience")]
    [InlineData("https://hints.example/#k=1")]
    public void What_is_no_address_of_a_site_is_refused(string address) => Assert.Equal(
        $"audience.address is an address such as https://example.org, without a path, and not '{address}': change it.",
        Assert.Single(new AudienceSettings { Address = address }.Faults()));

    [Fact]
    public void Limits_that_make_no_sense_are_refused_each_by_its_name()
    {
        var faults = new AudienceSettings { Door = (Session.Audience.AudienceDoor)7, MostViewers = 0, MostPerAddress = 100_001, AsksPerMinutePerAddress = -1 }
            .Faults().ToList();

        Assert.Equal(4, faults.Count);
        Assert.Contains("audience.door", faults[0], StringComparison.Ordinal);
        Assert.Contains("audience.mostViewers is 1 to 100000 and not 0", faults[1], StringComparison.Ordinal);
        Assert.Empty(new AudienceSettings().Faults());
    }

    private static async Task<HttpStatusCode> Asked(RunningCompanion companion, string host)
    {
        using var browser = companion.Browser();
        browser.DefaultRequestHeaders.Host = host;
        using var answer = await browser.GetAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }
}
