using Companion.Sight;

namespace Companion.Server.Live.Following;

/// <summary>A picture as a page sends it: all of it, or what has changed since another one.</summary>
/// <param name="Number">By which the page names the picture, of its own choice.</param>
/// <param name="Of">The picture that it is a change of; null for a whole one.</param>
/// <param name="Left">The first column that has changed.</param>
/// <param name="Top">The first row that has changed.</param>
/// <param name="Part">What was sent; null where nothing has changed.</param>
internal sealed record SentPicture(int Number, int? Of, int Left, int Top, Frame? Part);
