using System.Text.Json.Serialization;

namespace Companion.Drawing.Pictures;

/// <summary>
/// One thing to draw, in board units: the board is 9 by 9, (0, 0) is its top left corner and a cell is 1 by 1. Shapes name roles
/// of the palette and never a colour; painters know pixels.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(HouseShape), "house")]
[JsonDerivedType(typeof(CellShape), "cell")]
[JsonDerivedType(typeof(GroupShape), "group")]
[JsonDerivedType(typeof(LinkShape), "link")]
[JsonDerivedType(typeof(MarkShape), "mark")]
[JsonDerivedType(typeof(SlashShape), "slash")]
[JsonDerivedType(typeof(LozengeShape), "lozenge")]
[JsonDerivedType(typeof(CalledShape), "called")]
public abstract record Shape
{
    private protected Shape()
    {
    }
}
