using Companion.Session.Shows;
using Companion.Session.Shows.Files;

namespace Companion.Server.Shows;

/// <summary>A show that was opened.</summary>
/// <param name="Id">Its number; null for one that was opened from a file.</param>
/// <param name="Show">The show with its moments.</param>
/// <param name="File">The show as it is exported, with its edited chapters.</param>
/// <param name="Warning">What is missing, in one plain sentence; null where nothing is.</param>
public sealed record OpenedShow(int? Id, StoredShow Show, ShowFile File, string? Warning);
