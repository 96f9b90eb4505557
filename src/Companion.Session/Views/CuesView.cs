using System.Collections.Immutable;

namespace Companion.Session.Views;

/// <summary>The cue list, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="CallOuts">The call-outs in order.</param>
public sealed record CuesView(long Sequence, ImmutableArray<CallOutView> CallOuts);
