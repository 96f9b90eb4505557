using System.Net;
using Companion.Server.Live.Following;
using SkiaSharp;

namespace Companion.Server.Tests.Live.Following;

/// <summary>What a page sends of a picture that has changed in one place.</summary>
public sealed class ChangedPictureTests
{
    private static readonly byte[] Black = FollowedScreen.Draw(20, SKColors.Black);

    [Fact]
    public async Task It_is_put_into_the_last_picture_and_an_empty_one_is_the_last_picture_again()
    {
        await using var screen = await FollowedScreen.Start();
        await Take(screen, FollowedScreen.Picture, "picture=1");
        await Take(screen, Black, "picture=2&of=1&at=100,70");
        var seen = screen.Reader.Seen!;
        Assert.Equal((120, 120), (seen.Width, seen.Height));
        for (var y = 0; y < 120; y++)
        {
            for (var x = 0; x < 120; x++)
                Assert.Equal((x, y, x >= 100 && y is >= 70 and < 90 ? 0 : 255), (x, y, seen.Pixels[4 * (y * 120 + x)]));
        }

        await Take(screen, [], "picture=3&of=2&at=0,0");
        Assert.Same(seen, screen.Reader.Seen);
        await Take(screen, Black, "picture=4&of=3&at=0,0");
        Assert.Equal((0, 0, 255), (screen.Reader.Seen!.Pixels[0], screen.Reader.Seen.Pixels[4 * (70 * 120 + 100)], screen.Reader.Seen.Pixels[4 * 60]));
    }

    [Theory]
    [InlineData("picture=3&of=2&at=0,0")] // a picture that never came
    [InlineData("picture=1&of=0&at=0,0")]
    public async Task A_change_of_another_picture_than_the_last_is_not_taken(string picture)
    {
        await using var screen = await FollowedScreen.Start();
        await Take(screen, FollowedScreen.Picture, "picture=1");

        await Wants(screen, HttpStatusCode.PreconditionFailed, ScreenSentences.SendWhole, Black, picture);
    }

    [Fact]
    public async Task A_change_of_a_picture_that_is_forgotten_is_not_taken_and_a_whole_one_is()
    {
        await using var screen = await FollowedScreen.Start();
        await Take(screen, FollowedScreen.Picture, "picture=1");
        await screen.Panel.Do("FollowScreen", "this-page", true);

        await Wants(screen, HttpStatusCode.PreconditionFailed, ScreenSentences.SendWhole, [], "picture=2&of=1&at=0,0");
        await Take(screen, FollowedScreen.Picture, "picture=3");
    }

    [Theory]
    [InlineData("picture=2&of=1&at=101,0")]
    [InlineData("picture=2&of=1&at=0,-1")]
    [InlineData("picture=2&of=1&at=2147483647,2147483647")]
    [InlineData("picture=2&of=1&at=5")]
    [InlineData("picture=2&of=one&at=0,0")]
    public async Task A_change_that_lies_outside_or_nowhere_is_refused(string picture)
    {
        await using var screen = await FollowedScreen.Start();
        await Take(screen, FollowedScreen.Picture, "picture=1");

        await Wants(screen, HttpStatusCode.BadRequest, ScreenSentences.NoPicture, Black, picture);
    }

    private static async Task Take(FollowedScreen screen, byte[] body, string picture)
    {
        using var answer = await screen.Post(body, picture: picture);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    private static async Task Wants(FollowedScreen screen, HttpStatusCode code, string sentence, byte[] body, string picture)
    {
        using var answer = await screen.Post(body, picture: picture);
        Assert.Equal((code, sentence), (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)));
    }
}
