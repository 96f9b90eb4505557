namespace Companion.Engine.Proofs;

/// <summary>How far a hint goes. Each grade has a type of hint of its own.</summary>
public enum Grade
{
    /// <summary>A part of the grid to look at: <see cref="WhereHint"/>.</summary>
    Where = 1,

    /// <summary>The rule's name: <see cref="WhatHint"/>.</summary>
    What = 2,

    /// <summary>The pattern: <see cref="WhichHint"/>.</summary>
    Which = 3,

    /// <summary>The whole deduction: <see cref="WhyHint"/>.</summary>
    Why = 4,
}
