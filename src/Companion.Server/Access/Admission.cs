namespace Companion.Server.Access;

/// <summary>What a good key gives.</summary>
/// <param name="Role">Whose key it was.</param>
/// <param name="Replaced">Signalled when that key is replaced: what was opened with it is to be closed.</param>
public sealed record Admission(AccessRole Role, CancellationToken Replaced);
