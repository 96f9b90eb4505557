namespace Companion.Engine;

/// <summary>The three kinds of house.</summary>
public enum HouseKind
{
    /// <summary>A row of nine cells.</summary>
    Row,

    /// <summary>A column of nine cells.</summary>
    Column,

    /// <summary>A block of three by three cells.</summary>
    Block,
}
