using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>What any viewer may know without asking: which puzzle it is and whom it is owed to.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Credit">Title, setter and link of the puzzle.</param>
public sealed record ViewerView(long Sequence, Credit Credit);
