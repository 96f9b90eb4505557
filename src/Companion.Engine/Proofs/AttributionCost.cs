namespace Companion.Engine.Proofs;

/// <summary>How dear a proof is: by the sum of its steps' costs, and where that is equal by how many they are.</summary>
/// <param name="Cost">The sum of costs.</param>
/// <param name="Steps">The number of steps.</param>
internal readonly record struct AttributionCost(double Cost, int Steps) : IComparable<AttributionCost>
{
    /// <summary>More than any proof costs.</summary>
    public static AttributionCost Infinite { get; } = new(double.PositiveInfinity, 0);

    public static AttributionCost operator +(AttributionCost left, AttributionCost right) =>
        new(left.Cost + right.Cost, left.Steps + right.Steps);

    public static bool operator <(AttributionCost left, AttributionCost right) => left.CompareTo(right) < 0;

    public static bool operator >(AttributionCost left, AttributionCost right) => left.CompareTo(right) > 0;

    /// <inheritdoc/>
    public int CompareTo(AttributionCost other) =>
        Cost != other.Cost ? Cost.CompareTo(other.Cost) : Steps.CompareTo(other.Steps);
}
