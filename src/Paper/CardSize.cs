namespace Slantwise.Paper;

/// <summary>How large station cards are.</summary>
public enum CardSize
{
    /// <summary>Two on a page: A5 on A4.</summary>
    HalfPage = 1,

    /// <summary>A page each.</summary>
    FullPage = 2,
}
