using Companion.Server.Access;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Transport;
using Companion.Server.Settings;
using Companion.Server.Wire;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>Pushes to the panels who may open the audience's page and how many are there, twice a second at most.</summary>
internal sealed class DoorPump : ViewPump<AudienceView>, IAudienceOutput
{
    private readonly IHubContext<DeskHub, IDeskClient> _hub;
    private readonly Crowd _crowd;
    private readonly AudienceLink _link;
    private readonly int _most;
    private volatile AudienceView? _last;
    private DoorView? _shown;

    /// <summary>Makes the pump.</summary>
    /// <param name="hub">The panels.</param>
    /// <param name="crowd">Counts who is there.</param>
    /// <param name="link">Where viewers find the page.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="log">Where failures are reported.</param>
    public DoorPump(
        IHubContext<DeskHub, IDeskClient> hub, Crowd crowd, AudienceLink link, ServerSettings settings, TimeProvider clock, ILogger<DoorPump> log)
        : base(new(Patience: TimeSpan.FromMilliseconds(100), Pause: TimeSpan.FromMilliseconds(500)), clock, log)
    {
        (_hub, _crowd, _link, _most) = (hub, crowd, link, settings.Audience.MostViewers);
        crowd.Changed = () =>
        {
            if (_last is { } last)
                base.Show(last);
        };
    }

    /// <summary>What the panels are shown.</summary>
    /// <param name="view">The audience's newest view.</param>
    public DoorView Of(AudienceView view) => new(view.Sequence, view.Door, _crowd.Present, _most, _link.Address, _link.IsForOthers);

    /// <inheritdoc/>
    public override void Show(AudienceView newest) => base.Show(_last = newest);

    /// <inheritdoc/>
    protected override Task Send(AudienceView newest)
    {
        // The board changes far more often than this.
        var view = Of(newest);
        if (view with { Sequence = 0 } == _shown)
            return Task.CompletedTask;
        _shown = view with { Sequence = 0 };
        return _hub.Clients.Groups(nameof(AccessRole.Presenter), nameof(AccessRole.CoHost)).Door(view);
    }
}
