using System.Text;
using Companion.Server.Tests.Running;
using Companion.Session.Asks;

namespace Companion.Server.Tests.Log;

public sealed class ViewersNamesTests
{
    [Fact]
    public async Task Nothing_of_a_viewer_stands_in_a_file_whatever_they_asked_or_called()
    {
        using var folder = new TemporaryFolder();
        var chat = new Way("irc #grid", IsShared: true);
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Grids.Textbook, "Lanterns", "", "");
            await presenter.Do("SetDelay", 0);

            foreach (var line in new[] { "!hint", "!call r2c2 6", "!why nonsense-of-viewers" })
                await companion.Asks.Ask(chat, "account-of-viewers", "Name-of-viewers", line);
            await presenter.Sees("Viewers", view => view.GetProperty("calls").GetArrayLength() == 1);
            await presenter.Do("EndShow");
        }

        var files = Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories);
        Assert.Contains(files, file => Encoding.Latin1.GetString(File.ReadAllBytes(file)).Contains("Lanterns", StringComparison.Ordinal));
        Assert.All(files, file =>
            Assert.DoesNotContain("of-viewers", Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.OrdinalIgnoreCase));
    }
}
