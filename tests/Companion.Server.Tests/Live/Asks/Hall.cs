using Companion.Engine.Rules;
using Companion.Server.Live.Asks;
using Companion.Server.Settings;
using Companion.Server.Tests.Wire;
using Companion.Session;
using Companion.Session.Asks;
using Companion.Session.Commands;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Live.Asks;

/// <summary>A desk with a puzzle on show, an audience that sees it, and a clock that moves when it is told to.</summary>
internal sealed class Hall : IAsyncDisposable, IViewersOutput
{
    /// <summary>Long enough for a machine on which other things run; a test that needs it has failed.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private static readonly Way Door = new("door", IsShared: false);

    private SessionState _state = SessionState.Initial;
    private int _visitors;

    private Hall(AskSettings settings) => Desk = new(
        new Enquiries(settings, SomeSessions.Voice, Ladder.Standard),
        new ServerSettings { Asks = settings },
        SomeSessions.Voice,
        this,
        Found,
        Clock,
        NullLogger<AskDesk>.Instance);

    /// <summary>What is to be kept of calls.</summary>
    public FoundNotes Found { get; } = new();

    public FakeTimeProvider Clock { get; } = new();

    public AskDesk Desk { get; }

    /// <summary>The last view that the panels were shown, or null.</summary>
    public ViewersView? View { get; private set; }

    public static async Task<Hall> Open(AskSettings? settings = null)
    {
        var hall = new Hall(settings ?? new() { DelaySeconds = 0 });
        hall.Do(new LoadPuzzle(Grids.Textbook, "Title", "Setter", ""));
        await hall.Desk.StartAsync(TestContext.Current.CancellationToken);
        return hall;
    }

    public void Do(Command command)
    {
        var decision = Decider.Decide(_state, command, Clock.GetUtcNow());
        Assert.Null(decision.Refusal);
        _state = decision.Events.Aggregate(_state, Evolver.Evolve);
        Desk.Show(new(_state, null));
    }

    /// <summary>Waits until all that came in before has been looked at.</summary>
    public Task Handled() => Within(Desk.Ask(Door, $"{_visitors++}", "", new AskUnclear(AskWord.Left)));

    public static Task<AskReply> Within(Task<AskReply> asking) => asking.WaitAsync(Patience, TestContext.Current.CancellationToken);

    public void Show(ViewersView view) => View = view;

    public async ValueTask DisposeAsync()
    {
        await Desk.StopAsync(CancellationToken.None);
        Desk.Dispose();
    }
}
