using Companion.Session.Audience;

namespace Companion.Server.Wire;

/// <summary>What the panels are shown of the audience's page.</summary>
/// <param name="Sequence">The number of the last view that viewers were shown; several of these may have the same.</param>
/// <param name="Door">Who may open the page.</param>
/// <param name="Present">How many viewers are there.</param>
/// <param name="Most">How many may be.</param>
/// <param name="Address">The page's address, without a key: it may be seen by anybody.</param>
/// <param name="IsForOthers">Whether that address is one for other machines.</param>
public sealed record DoorView(long Sequence, AudienceDoor Door, int Present, int Most, string Address, bool IsForOthers);
