namespace Companion.Server.Access;

/// <summary>Knows keys.</summary>
internal interface IKeys
{
    /// <summary>Whose key this is, or null.</summary>
    /// <param name="text">What was sent; may be null.</param>
    Admission? Find(string? text);
}
