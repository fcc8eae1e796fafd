using Slantwise.Records.Groups;

namespace Slantwise.Records.Tests.Groups;

public sealed class GroupMatsTests
{
    // By hand: 10 mats among 4 groups are 2, 3, 2, 3; 2 mats among 5 groups lie with three and with two neighbours.
    [Theory]
    [InlineData(10, 4, "1, 2 | 3–5 | 6, 7 | 8–10")]
    [InlineData(2, 5, "1 | 1 | 1 | 2 | 2")]
    [InlineData(3, 3, "1 | 2 | 3")]
    [InlineData(null, 2, " | ")]
    [InlineData(0, 2, " | ")]
    public void Shared_MatsAmongGroups_AreEvenAndInOrder(int? mats, int groups, string expected) =>
        Assert.Equal(expected, string.Join(" | ", GroupMats.Shared(mats, groups).Select(GroupMats.Text)));

    [Theory]
    [InlineData("1, 3-5 7", "1, 3–5, 7")]
    [InlineData("2;1 2", "1, 2")]
    [InlineData("", "")]
    [InlineData("4–6", "4–6")]
    public void Read_WhatIsTyped_IsSaidAgainInOrder(string typed, string said) => Assert.Equal(said, GroupMats.Text(GroupMats.Read(typed)!));

    [Theory]
    [InlineData("0")]
    [InlineData("101")]
    [InlineData("5-3")]
    [InlineData("1-2-3")]
    [InlineData("a")]
    [InlineData("-1")]
    public void Read_WhatIsNoMat_IsNone(string typed) => Assert.Null(GroupMats.Read(typed));
}
