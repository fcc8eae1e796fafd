namespace Slantwise.Paper;

/// <summary>How devices join a lesson, to be hung on a wall.</summary>
/// <param name="ClassName">The class.</param>
/// <param name="Code">What is typed to join.</param>
/// <param name="Link">What the QR symbol says: the address with the code in it.</param>
/// <param name="Address">What is typed into a browser, in as few letters as it takes.</param>
/// <param name="Until">The code joins devices up to here, in the time of the clock on the wall.</param>
public sealed record JoinInvitation(string ClassName, string Code, string Link, string Address, DateTimeOffset Until);
