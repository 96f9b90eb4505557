using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Wire;
using Companion.Session.Commands;
using Companion.Session.Following;

namespace Companion.Server.Live.Desk;

/// <content>What the presenter's panel can ask for about the screen that it follows. The pictures come another way.</content>
internal sealed partial class DeskHub
{
    private const int LongestPage = 64;

    /// <summary>A panel has gone. Where it was the one that follows, nothing of its screen stays behind.</summary>
    public override Task OnDisconnectedAsync(Exception? exception)
    {
        if (Caller == AccessRole.Presenter)
            screens.Forget();
        return base.OnDisconnectedAsync(exception);
    }

    public Task<Reply> FollowScreen(string? page, bool withMarks) => Tell(() => screens.Start(PageName(page), withMarks));

    public Task<Reply> StopFollowing(string? page) => Tell(() => screens.Stop(PageName(page)));

    public Task<Reply> ReadAs(string? cell, int digit) =>
        Tell(() => screens.Say(Cell.Parse(cell ?? ""), digit == 0 ? default : new CellContent(Digit(digit))));

    public Task<Reply> AcceptReading(string? cell) => Tell(() => screens.Say(Cell.Parse(cell ?? ""), null));

    public Task<Reply> LoadFromScreen() => Enter(_ => [screens.Load()]);

    public Task<Reply> TakeScreen() => Enter(screens.TakeScreen);

    // Others are told first that it is not theirs to ask, whatever is on the screen.
    private Task<Reply> Enter(Func<Snapshot, IReadOnlyList<Command>> read) =>
        Caller == AccessRole.Presenter ? session.AskAll(Caller, read) : Tell(() => { });

    // What is said about the screen is no entry: it has its effect at the next look.
    private Task<Reply> Tell(Action say)
    {
        return Task.FromResult(new Reply(WhyNot(), session.Current.State.Sequence));

        string? WhyNot()
        {
            if (Caller != AccessRole.Presenter)
                return Permission.OnlyThePresenter;
            try
            {
                say();
                return null;
            }
            catch (FormatException unreadable)
            {
                return unreadable.Message;
            }
        }
    }

    private static string PageName(string? page) => page is { Length: > 0 and <= LongestPage }
        ? page
        : throw new FormatException($"A page is known by a word of at most {LongestPage} characters.");
}
