using System.Net;
using Companion.Server.Access;
using Companion.Server.Live.Audience;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;
using Companion.Session.Audience;

namespace Companion.Server.Tests.Live.Audience;

/// <summary>Who comes in at the audience's page, and what those are told who do not.</summary>
public sealed class DoorTests
{
    [Theory]
    [InlineData(AudienceDoor.Closed, false, HttpStatusCode.Forbidden, AudienceSentences.Closed)]
    [InlineData(AudienceDoor.Closed, true, HttpStatusCode.Forbidden, AudienceSentences.Closed)]
    [InlineData(AudienceDoor.ByLink, false, HttpStatusCode.Unauthorized, AudienceSentences.ByLink)]
    [InlineData(AudienceDoor.ByLink, true, HttpStatusCode.OK, "")]
    [InlineData(AudienceDoor.Open, false, HttpStatusCode.OK, "")]
    [InlineData(AudienceDoor.Open, true, HttpStatusCode.OK, "")]
    public async Task Whoever_knocks_is_let_in_or_told_why_not(AudienceDoor door, bool hasKey, HttpStatusCode status, string sentence)
    {
        await using var companion = await RunningCompanion.Start(settings: At(door));

        Assert.Equal((status, sentence), await Knock(companion, hasKey));
    }

    [Fact]
    public async Task When_the_presenter_closes_the_door_all_are_sent_away_and_when_it_opens_by_link_those_without_one()
    {
        await using var companion = await RunningCompanion.Start(settings: At(AudienceDoor.Open));
        await using var presenter = await companion.OpenDesk();
        await using var keyed = await companion.OpenAudience();
        await using var stranger = await companion.OpenAudienceWithoutKey();

        await presenter.Do("SetAudienceDoor", "byLink");
        await stranger.IsClosed();
        await keyed.Sees("Board", view => view.GetProperty("door").GetString() == "byLink");
        Assert.Equal((HttpStatusCode.Unauthorized, AudienceSentences.ByLink), await Knock(companion, hasKey: false));

        await presenter.Do("SetAudienceDoor", "closed");
        await keyed.IsClosed();
        Assert.Equal((HttpStatusCode.Forbidden, AudienceSentences.Closed), await Knock(companion, hasKey: true));

        await presenter.Do("SetAudienceDoor", "open");
        await companion.IsOpenTo(AudienceDoor.Open);
        await using var back = await companion.OpenAudienceWithoutKey();
        await back.Sees("Board", _ => true);
    }

    [Theory]
    [InlineData("open", false)]
    [InlineData("byLink", true)]
    [InlineData("closed", true)]
    public async Task The_presenter_is_handed_the_link_to_copy_and_nobody_else_is_told_it(string door, bool hasKey)
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var second = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await presenter.Do("SetAudienceDoor", door);
        await presenter.Sees("Door", view => view.GetProperty("door").GetString() == door);

        await presenter.Do("AudienceLink");

        var page = $"http://localhost:{companion.Address.Port}/audience";
        var link = await presenter.Sees("AudienceLink", _ => true);
        Assert.Equal(hasKey ? $"{page}#k={companion.Keys[AccessRole.Viewer].Reveal()}" : page, link.GetString());
        Assert.Equal(page, (await coHost.Sees("Door", _ => true)).GetProperty("address").GetString());
        Assert.Equal("Only the presenter may do this: ask the presenter.", (await coHost.Ask("AudienceLink")).Refusal);
        Assert.DoesNotContain(second.Told.Concat(coHost.Told), told => told.Name == "AudienceLink");
    }

    [Fact]
    public async Task The_panels_are_told_how_many_are_there()
    {
        await using var companion = await RunningCompanion.Start(settings: At(AudienceDoor.Open));
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        var viewer = await companion.OpenAudienceWithoutKey();
        await presenter.Sees("Door", view => view.GetProperty("present").GetInt32() == 1);
        await coHost.Sees("Door", view => view.GetProperty("present").GetInt32() == 1);

        await viewer.DisposeAsync();

        await presenter.Sees("Door", view => view.GetProperty("present").GetInt32() == 0);
    }

    [Fact]
    public async Task A_co_host_may_not_open_the_door()
    {
        await using var companion = await RunningCompanion.Start();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);

        Assert.Equal("Only the presenter may do this: ask the presenter.", (await coHost.Ask("SetAudienceDoor", "open")).Refusal);
    }

    [Fact]
    public async Task When_as_many_are_there_as_may_be_the_next_is_told_so_and_comes_in_when_one_has_left()
    {
        await using var companion = await RunningCompanion.Start(settings: At(AudienceDoor.Open, new() { MostViewers = 2 }));
        await using var one = await companion.OpenAudienceWithoutKey();
        var two = await companion.OpenAudienceWithoutKey();

        Assert.Equal((HttpStatusCode.ServiceUnavailable, AudienceSentences.Full), await Knock(companion, hasKey: true));
        await Assert.ThrowsAnyAsync<Exception>(() => companion.OpenAudience());

        await two.DisposeAsync();
        await RunningCompanion.Until(() => companion.Crowd.Present == 1);
        await using var three = await companion.OpenAudience();
        await three.Sees("Board", _ => true);
    }

    [Fact]
    public async Task One_address_takes_no_more_places_than_it_may()
    {
        await using var companion = await RunningCompanion.Start(settings: At(AudienceDoor.Open, new() { MostPerAddress = 1 }));
        await using var one = await companion.OpenAudienceWithoutKey();

        Assert.Equal((HttpStatusCode.ServiceUnavailable, AudienceSentences.TooManyFromHere), await Knock(companion, hasKey: false));
    }

    [Fact]
    public async Task Whoever_only_knocks_takes_no_place()
    {
        await using var companion = await RunningCompanion.Start(settings: At(AudienceDoor.Open, new() { MostViewers = 1 }));
        for (var knock = 0; knock < 5; knock++)
            await Knock(companion, hasKey: false);

        Assert.Equal(0, companion.Crowd.Present);
    }

    private static ServerSettings At(AudienceDoor door, AudienceSettings? audience = null) =>
        new() { Port = 0, Audience = (audience ?? new()) with { Door = door } };

    // As a page does that was refused, to be told why.
    private static async Task<(HttpStatusCode Status, string Sentence)> Knock(RunningCompanion companion, bool hasKey)
    {
        await companion.IsOpenTo(companion.Session.State.Asks.Door);
        using var browser = companion.Browser();
        if (hasKey)
            browser.DefaultRequestHeaders.Authorization = new("Bearer", companion.Keys[AccessRole.Viewer].Reveal());
        using var answer = await browser.PostAsync(
            new Uri($"{HubPaths.Audience}/negotiate?negotiateVersion=1", UriKind.Relative), null, TestContext.Current.CancellationToken);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
