namespace Slantwise.Desk.Pages.Halls;

/// <summary>A number of a mat in the table.</summary>
public enum MatField
{
    /// <summary>Its middle, from the left wall.</summary>
    Left = 1,

    /// <summary>Its middle, from the front wall.</summary>
    Front = 2,

    /// <summary>The radius of its falling circle.</summary>
    Fall = 3,
}
