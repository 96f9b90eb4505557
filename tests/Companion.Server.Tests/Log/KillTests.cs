using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Log;

public sealed class KillTests
{
    private static readonly string[] Cells = ["r1c3"];

    [Fact]
    public async Task Every_acknowledged_entry_is_there_after_the_process_was_killed()
    {
        using var folder = new TemporaryFolder();
        var random = new Random(7);
        var acknowledged = 2L; // The puzzle of the first start, and the rule that it features.
        for (var life = 0; life < 6; life++)
        {
            await using var companion = await CompanionProcess.Serve(folder.Path);
            await using var page = await OpenPage.Open(companion.Address, HubPaths.Presenter, companion.PresenterKey);
            var found = (await page.Sees("Desk", acknowledged)).GetProperty("sequence").GetInt64();
            // One more may have been kept than could be acknowledged.
            Assert.InRange(found, acknowledged, acknowledged + 1);

            acknowledged = await EnterUntilKilled(companion, page, killAfter: random.Next(1, 60));
        }

        await using var last = await CompanionProcess.Serve(folder.Path);
        await using var panel = await OpenPage.Open(last.Address, HubPaths.Presenter, last.PresenterKey);
        var view = await panel.Sees("Desk", acknowledged);
        var undo = view.GetProperty("undo").GetString();
        Assert.NotNull(undo);

        await panel.Do("Undo");
        Assert.Equal(undo, (await panel.Sees("Desk", acknowledged + 1)).GetProperty("redo").GetString());
    }

    // Marks are toggled one after the other while somewhere in between the process dies.
    private static async Task<long> EnterUntilKilled(CompanionProcess companion, OpenPage page, int killAfter)
    {
        var acknowledged = 0L;
        var killed = Task.CompletedTask;
        try
        {
            for (var entry = 0; ; entry++)
            {
                var reply = await page.Ask("ToggleCellMark", Cells, entry % 9 + 1);
                Assert.Null(reply.Refusal);
                acknowledged = reply.Sequence;
                if (entry == killAfter)
                    killed = Task.Run(companion.Kill, TestContext.Current.CancellationToken);
            }
        }
        catch (Exception cutOff) when (cutOff is not Xunit.Sdk.XunitException)
        {
            await killed;
            return acknowledged;
        }
    }
}
