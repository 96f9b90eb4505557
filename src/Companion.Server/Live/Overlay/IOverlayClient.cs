using Companion.Server.Wire;

namespace Companion.Server.Live.Overlay;

/// <summary>What the pages on air can be told. Each is a whole view; a lost one is healed by the next.</summary>
public interface IOverlayClient
{
    /// <summary>What the overlay of a scene draws.</summary>
    /// <param name="view">The view.</param>
    Task Overlay(OverlayWire view);

    /// <summary>What the stage draws.</summary>
    /// <param name="view">The view.</param>
    Task Stage(StageWire view);
}
