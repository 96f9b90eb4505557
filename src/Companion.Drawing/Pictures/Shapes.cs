namespace Companion.Drawing.Pictures;

/// <summary>A house or chute to look at: dashed outline, light hatching.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Top edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record HouseShape(double X, double Y, double Width, double Height) : Shape;

/// <summary>A cell of the pattern: a frame round it and a corner tab with a letter.</summary>
/// <param name="X">Left edge of the cell.</param>
/// <param name="Y">Top edge of the cell.</param>
/// <param name="IsSecond">First role (pivot, base): one thick frame. Second role (pincers, cover): a double frame.</param>
/// <param name="Tab">The letter on the tab; several cells may share one.</param>
public sealed record CellShape(double X, double Y, bool IsSecond, string Tab) : Shape;

/// <summary>A group, which a link takes as one candidate: a rounded outline round its digit in all its cells.</summary>
/// <param name="X1">Centre of its first candidate.</param>
/// <param name="Y1">Centre of its first candidate.</param>
/// <param name="X2">Centre of its last candidate, in the same row or column.</param>
/// <param name="Y2">Centre of its last candidate.</param>
public sealed record GroupShape(double X1, double Y1, double X2, double Y2) : Shape;

/// <summary>A link between two candidates: solid if strong, broken if weak. Bent, where cells between would be crossed.</summary>
/// <param name="X1">Start.</param>
/// <param name="Y1">Start.</param>
/// <param name="X2">End.</param>
/// <param name="Y2">End.</param>
/// <param name="BendX">Control point of the quadratic curve; on the straight line where it does not bend.</param>
/// <param name="BendY">Control point of the quadratic curve.</param>
/// <param name="IsStrong">Strong or weak.</param>
public sealed record LinkShape(double X1, double Y1, double X2, double Y2, double BendX, double BendY, bool IsStrong) : Shape;

/// <summary>A candidate of the pattern, on a plate of its own.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Digit">The digit, 1 to 9.</param>
public sealed record MarkShape(double X, double Y, int Digit) : Shape;

/// <summary>A candidate that goes: its digit on a plate with a slash through it.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Digit">The digit, 1 to 9.</param>
public sealed record SlashShape(double X, double Y, int Digit) : Shape;

/// <summary>A digit that follows: a filled lozenge over its cell.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Digit">The digit, 1 to 9.</param>
public sealed record LozengeShape(double X, double Y, int Digit) : Shape;

/// <summary>A cell that viewers call: a bracket in each corner, and at its foot a plate that says about how many they are.</summary>
/// <param name="X">Left edge of the cell.</param>
/// <param name="Y">Top edge of the cell.</param>
/// <param name="Count">About how many, in a few characters such as <c>5+</c>.</param>
public sealed record CalledShape(double X, double Y, string Count) : Shape;
