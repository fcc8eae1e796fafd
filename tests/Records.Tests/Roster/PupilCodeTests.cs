using CsCheck;
using Slantwise.Records.Roster;

namespace Slantwise.Records.Tests.Roster;

public sealed class PupilCodeTests
{
    [Fact]
    public void Of_FirstNumbers_AreAllDifferentAndShort()
    {
        var codes = Enumerable.Range(0, 12_167).Select(n => PupilCode.Of(n)).ToHashSet();
        Assert.Equal(12_167, codes.Count);
        Assert.All(codes, c => Assert.Equal(4, c.Length));
        Assert.Equal(5, PupilCode.Of(12_167).Length);
    }

    [Fact]
    public void Of_AnyNumber_HasNoLookAlikesAndItsCheckHolds() =>
        Gen.Long[0, 1_000_000_000].Sample(number =>
        {
            var code = PupilCode.Of(number);
            Assert.All(code, c => Assert.DoesNotContain(c, "01BGIOQSUVZAE"));
            Assert.True(PupilCode.IsMade(code));
            Assert.True(PupilCode.IsMade(code.ToLowerInvariant()));
        });

    [Fact]
    public void IsMade_OneWrongSignOrTwoSwapped_IsNoticed() =>
        Gen.Select(Gen.Long[0, 300_000], Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[1, 22]).Sample((number, at, with, step) =>
        {
            var code = PupilCode.Of(number).ToCharArray();
            (at, with) = (at % code.Length, with % code.Length);
            var wrong = (char[])code.Clone();
            wrong[at] = PupilCode.Signs[(PupilCode.Signs.IndexOf(wrong[at]) + step) % 23];
            Assert.False(PupilCode.IsMade(new string(wrong)));
            if (code[at] == code[with]) return;
            (code[at], code[with]) = (code[with], code[at]);
            Assert.False(PupilCode.IsMade(new string(code)));
        });

    [Fact]
    public void Of_Neighbours_DifferInMoreThanOneSignOfThree()
    {
        for (var n = 0; n < 500; n++)
        {
            var (one, next) = (PupilCode.Of(n), PupilCode.Of(n + 1));
            Assert.True(one.Zip(next).Count(p => p.First != p.Second) >= 2, $"{one} {next}");
        }
    }

    [Fact]
    public void Of_NegativeNumber_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => PupilCode.Of(-1));
}
