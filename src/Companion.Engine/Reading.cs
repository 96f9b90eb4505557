using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Companion.Engine;

/// <summary>What came of validating a draft: the validated thing, or every reason against it.</summary>
/// <typeparam name="T">What a good draft becomes.</typeparam>
public sealed class Reading<T>
    where T : class
{
    internal Reading(T value) => Value = value;

    internal Reading(ImmutableArray<BoardFault> faults) => Faults = faults;

    /// <summary>The validated thing, or null where there are faults.</summary>
    public T? Value { get; }

    /// <summary>Every reason against the draft; empty where it is good.</summary>
    public ImmutableArray<BoardFault> Faults { get; } = [];

    /// <summary>Whether the draft is good.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;
}
