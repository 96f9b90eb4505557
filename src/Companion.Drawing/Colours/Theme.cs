namespace Companion.Drawing.Colours;

/// <summary>Which look a board of our own has.</summary>
public enum Theme
{
    /// <summary>Dark on light.</summary>
    Light,

    /// <summary>Light on dark.</summary>
    Dark,

    /// <summary>Black on white for print, which reads well without colour too.</summary>
    Paper,
}
