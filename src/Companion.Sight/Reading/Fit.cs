using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>How a mark lies over a look.</summary>
/// <param name="Digit">The look's digit.</param>
/// <param name="Look">The look.</param>
/// <param name="Over">The mark laid over it.</param>
/// <param name="IsReset">Whether the look had to be set at the mark's height and place for that.</param>
internal readonly record struct Fit(Digit Digit, Sign Look, Overlay Over, bool IsReset);
