using System.Net;
using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Live.Following;
using Companion.Server.Tests.Running;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>Who may post pictures, and what comes of those that are none.</summary>
public sealed class ScreenEndpointTests
{
    [Fact]
    public async Task Only_the_presenters_page_may_post_a_picture()
    {
        await using var screen = await FollowedScreen.Start();
        foreach (var path in new[] { HubPaths.Screen, HubPaths.ScreenGrid })
        {
            foreach (var role in Enum.GetValues<AccessRole>().Where(role => role != AccessRole.Presenter))
            {
                using var other = screen.Companion.Browser();
                other.DefaultRequestHeaders.Authorization = new("Bearer", screen.Companion.Keys[role].Reveal());
                Assert.Equal(HttpStatusCode.Forbidden, await Post(other, path));
            }

            using var nobody = screen.Companion.Browser();
            Assert.Equal(HttpStatusCode.Unauthorized, await Post(nobody, path));
            using var foreign = new HttpClient { BaseAddress = screen.Companion.Address };
            foreign.DefaultRequestHeaders.Authorization = screen.Browser.DefaultRequestHeaders.Authorization;
            Assert.Equal(HttpStatusCode.Forbidden, await Post(foreign, path));
            foreign.DefaultRequestHeaders.Add("Origin", "http://evil.example");
            Assert.Equal(HttpStatusCode.Forbidden, await Post(foreign, path));
        }
    }

    [Fact]
    public async Task The_cookie_of_the_presenters_hub_is_enough()
    {
        await using var screen = await FollowedScreen.Start();
        using var browser = screen.Companion.Browser(); // keeps cookies
        using var entered = await browser.PostAsync(
            new Uri("/enter", UriKind.Relative),
            new StringContent($$"""{"key":"{{screen.Companion.Keys[AccessRole.Presenter].Reveal()}}"}""", System.Text.Encoding.UTF8, "application/json"),
            TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, await Post(browser, HubPaths.ScreenGrid));
    }

    public static TheoryData<string, string> NoCorners => new()
    {
        { "", "none" },
        { "10,10,110,10,110,110,10", "seven" },
        { "10,10,110,10,110,110,10,NaN", "no number" },
        { "10,10,121,10,110,110,10,110", "outside to the right" },
        { "10,10,110,10,110,110,10,-1", "outside above" },
        { "10,10,110,10,110,110,10,110,10", "nine" },
        { "10,10,10,10,10,10,10,10", "all in one place" },
        { "110,10,10,10,10,110,110,110", "mirrored" },
        { "10,10,110,10,110,50,10,50", "a strip" },
    };

    [Theory]
    [MemberData(nameof(NoCorners))]
    public async Task Corners_that_are_none_are_refused(string corners, string what)
    {
        await using var screen = await FollowedScreen.Start();
        using var answer = await screen.Post(FollowedScreen.Picture, corners);

        Assert.Equal((what, HttpStatusCode.BadRequest, ScreenSentences.NoCorners), (what, answer.StatusCode, await Text(answer)));
    }

    [Fact]
    public async Task What_is_no_picture_or_too_large_is_refused_and_the_next_one_is_taken()
    {
        await using var screen = await FollowedScreen.Start();
        foreach (var body in new[] { [], "no picture"u8.ToArray(), FollowedScreen.Picture[..20], new byte[1024 * 1024 + 1] })
        {
            using var answer = await screen.Post(body);
            Assert.Equal((HttpStatusCode.BadRequest, ScreenSentences.NoPicture), (answer.StatusCode, await Text(answer)));
        }

        await screen.Look();
    }

    [Fact]
    public async Task A_page_that_does_not_follow_or_not_any_more_is_told_so()
    {
        await using var screen = await FollowedScreen.Start();
        Assert.Equal(HttpStatusCode.Conflict, (await screen.Post(FollowedScreen.Picture, page: "another")).StatusCode);

        await screen.Panel.Do("FollowScreen", "another", true);
        using var answer = await screen.Post(FollowedScreen.Picture);
        Assert.Equal((HttpStatusCode.Conflict, ScreenSentences.NotFollowing), (answer.StatusCode, await Text(answer)));

        await screen.Panel.Do("StopFollowing", "another");
        Assert.Equal(HttpStatusCode.Conflict, (await screen.Post(FollowedScreen.Picture, page: "another")).StatusCode);
        Assert.Equal("No screen is followed now: begin with Follow my screen.", (await screen.Panel.Ask("ReadAs", "r1c3", 4)).Refusal);
    }

    [Fact]
    public async Task Pictures_that_come_in_floods_are_refused()
    {
        await using var screen = await FollowedScreen.Start();
        var refused = 0;
        for (var count = 0; count < 200 && refused == 0; count++)
        {
            using var answer = await screen.Post(FollowedScreen.Picture);
            refused += answer.StatusCode == HttpStatusCode.TooManyRequests ? 1 : 0;
        }

        Assert.Equal(1, refused);
    }

    [Fact]
    public async Task The_grid_is_looked_for_in_a_whole_picture_and_read_where_the_page_says()
    {
        await using var screen = await FollowedScreen.Start();
        screen.Reader.Place = new(new(1.5f, 2), new(101, 2), new(101, 102), new(1.5f, 102));
        using var found = await screen.Post(FollowedScreen.Picture, path: HubPaths.ScreenGrid);
        Assert.Equal("[1.5,2,101,2,101,102,1.5,102]", (await FollowedScreen.Read(found)).GetProperty("corners").GetRawText());

        screen.Reader.Place = null;
        using var none = await screen.Post(FollowedScreen.Picture, path: HubPaths.ScreenGrid);
        Assert.Equal("null", (await FollowedScreen.Read(none)).GetProperty("corners").GetRawText());

        await screen.Look();
        Assert.Equal(new GridPlace(new(10, 10), new(110, 10), new(110, 110), new(10, 110)), screen.Reader.ReadAt);
    }

    [Fact]
    public async Task Nothing_of_a_picture_is_in_any_file()
    {
        using var folder = new TemporaryFolder();
        var picture = FollowedScreen.Draw(137);
        await using (var screen = await FollowedScreen.Start(folder.Path))
        {
            screen.Reader.Reading = screen.Reader.Reading.With("r1c3", read => Readings.Digit(read.Cell, 4));
            for (var look = 0; look < 3; look++)
                (await screen.Post(picture)).Dispose();
            (await screen.Post(picture, path: HubPaths.ScreenGrid)).Dispose();
            (await screen.Post(picture[..80])).Dispose();
            await RunningCompanion.Until(() => screen.Companion.Session.State.Grid.DigitAt(Cell.Parse("r1c3")) is not null);
        }

        foreach (var file in Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories))
        {
            var bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
            Assert.Equal((file, -1), (file, bytes.AsSpan().IndexOf("PNG"u8)));
            Assert.Equal((file, -1), (file, bytes.AsSpan().IndexOf(picture.AsSpan(33, 24))));
        }
    }

    private static async Task<HttpStatusCode> Post(HttpClient browser, string path)
    {
        using var answer = await browser.PostAsync(
            new Uri(path, UriKind.Relative), new ByteArrayContent(FollowedScreen.Picture), TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    private static Task<string> Text(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
}
