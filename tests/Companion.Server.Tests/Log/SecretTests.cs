using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Log;

public sealed class SecretTests
{
    [Fact]
    public async Task No_key_and_no_query_stands_in_a_log_or_on_a_page_whatever_was_done_with_it()
    {
        using var folder = new TemporaryFolder();
        List<string> keys;
        List<string> answers = [];
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            keys = [.. Enum.GetValues<AccessRole>().Select(role => companion.Keys[role].Reveal())];
            using var browser = companion.Browser();
            foreach (var key in keys)
            {
                // As a cookie, as a header, in the wrong places, and where it opens nothing.
                using var entered = await browser.PostAsync(
                    new Uri("/enter", UriKind.Relative),
                    new StringContent($$"""{"key":"{{key}}"}""", System.Text.Encoding.UTF8, "application/json"),
                    TestContext.Current.CancellationToken);
                foreach (var path in new[] { "/", $"/presenter?k={key}", $"/{key}", $"/hubs/desk?access_token={key}" })
                {
                    using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
                    request.Headers.Authorization = new("Bearer", key);
                    using var answer = await browser.SendAsync(request, TestContext.Current.CancellationToken);
                    answers.Add(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
                }
            }

            await using var presenter = await companion.OpenDesk();
            await Assert.ThrowsAnyAsync<Exception>(() => presenter.Ask("NoSuchMethod", keys[0]));
            await presenter.Ask("StandBy", keys[0]);
            await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
            await coHost.Ask("Undo");
        }

        var logs = Directory.GetFiles(folder.In("logs")).Select(File.ReadAllText).ToList();
        Assert.All(keys, key => Assert.All([.. logs, .. answers], text => Assert.DoesNotContain(key, text, StringComparison.Ordinal)));
        Assert.All(logs, text => Assert.DoesNotContain("access_token", text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_log_file_is_closed_to_other_users()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no modes; the user's folders are closed there.");
        using var folder = new TemporaryFolder();
        await using (await RunningCompanion.Start(folder.Path))
        {
        }

        var file = Assert.Single(Directory.GetFiles(folder.In("logs")));
#pragma warning disable CA1416 // skipped on Windows above
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
#pragma warning restore CA1416
    }
}
