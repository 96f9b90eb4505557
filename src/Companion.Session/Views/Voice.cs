using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>How the views put things into words.</summary>
/// <param name="Wording">The phrases.</param>
/// <param name="Rate">How fast the presenter speaks.</param>
public sealed record Voice(Wording Wording, SpeakingRate Rate = default);
