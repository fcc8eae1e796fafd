namespace Slantwise.Desk.Pages.Library;

/// <summary>What a task takes beside the floor, its walls and its lines.</summary>
public enum LibraryNeed
{
    /// <summary>Nothing.</summary>
    Floor = 1,

    /// <summary>A mat and nothing else.</summary>
    Mat = 2,

    /// <summary>A rope and nothing else.</summary>
    Rope = 3,

    /// <summary>A ball, with cones or marks to aim at, and nothing else.</summary>
    Ball = 4,

    /// <summary>Something more at one of its levels: a bench, a box, hoops, a bat.</summary>
    More = 5,
}
