using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Live.Transport;
using Companion.Server.Wire;
using Companion.Session.Ladders;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>Pushes the session to the presenter's and the co-hosts' panels.</summary>
internal sealed class DeskPump(
    IHubContext<DeskHub, IDeskClient> hub, Voice voice, Ladder ladder, TimeProvider clock, ILogger<DeskPump> log)
    : ViewPump<Snapshot>(new(Patience: TimeSpan.FromMilliseconds(100)), clock, log), IOutput
{
    private ScanResult? _shown;
    private Outlook? _shownOutlook;
    private SessionState _cued = SessionState.Initial;
    private LadderCut? _shownCut;
    private SheetOf _shownSheet;

    /// <inheritdoc/>
    protected override Task Send(Snapshot snapshot)
    {
        var presenters = hub.Clients.Group(nameof(AccessRole.Presenter));
        var coHosts = hub.Clients.Group(nameof(AccessRole.CoHost));
        var desk = DeskWire.Of(snapshot, AccessRole.Presenter, voice);
        List<Task> sends = [presenters.Desk(desk), coHosts.Desk(desk with { Role = AccessRole.CoHost })];
        if (snapshot.Scan is { } scan && scan != _shown)
        {
            var next = PanelViews.Next(scan, voice);
            sends.AddRange([presenters.Next(next), coHosts.Next(next)]);
            _shown = scan;
        }

        if (snapshot.Outlook is { } outlook && outlook != _shownOutlook)
        {
            var forecast = ForecastView.Of(outlook, voice);
            sends.AddRange([presenters.Forecast(forecast), coHosts.Forecast(forecast)]);
            _shownOutlook = outlook;
        }

        if (MayDiffer(snapshot.State))
        {
            var cues = CueViews.Of(snapshot.State, voice);
            sends.AddRange([presenters.Cues(cues), coHosts.Cues(cues)]);
            _cued = snapshot.State;
        }

        if (snapshot.State.LadderCut != _shownCut)
        {
            var whole = LadderView.Of(snapshot.State, ladder, voice);
            sends.AddRange([presenters.Ladder(whole), coHosts.Ladder(whole)]);
            _shownCut = snapshot.State.LadderCut;
        }

        if (SheetOf.Of(snapshot) is var sheetOf && sheetOf != _shownSheet)
        {
            var sheet = RunSheetWire.Of(snapshot, voice);
            sends.AddRange([presenters.RunSheet(sheet), coHosts.RunSheet(sheet)]);
            _shownSheet = sheetOf;
        }

        return Task.WhenAll(sends);
    }

    // What a run sheet is made of. An entry alone is not worth another one: its plan and its proof follow.
    private readonly record struct SheetOf(PlannedWay? Ahead, ShowPlan? Plan, PuzzleNotes? Notes, int Proofs, int Used)
    {
        public static SheetOf Of(Snapshot snapshot) =>
            new(snapshot.Ahead, snapshot.State.Plan, snapshot.State.Notes, snapshot.State.Attributions.Count, snapshot.State.Used.Count);
    }

    // A deduction on the list is passed by what a scan looks at too.
    private bool MayDiffer(SessionState state) =>
        _cued.Cues != state.Cues || (state.Cues.CallOuts.Count > 0 && !Scan.HoldsFor(_cued, state));
}
