using Companion.Server.Wire;

namespace Companion.Server.Relay.Notices;

/// <summary>The answer to an ask.</summary>
/// <param name="Id">The ask's number.</param>
/// <param name="Answer">The answer.</param>
internal sealed record AnswerNotice(long Id, AudienceAnswer Answer);
