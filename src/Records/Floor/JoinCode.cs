namespace Slantwise.Records.Floor;

/// <summary>The code on the wall: short enough to type with cold fingers, without letters that look or sound like others.</summary>
public static class JoinCode
{
    /// <summary>What a code is made of: no 0 and O, no 1, I and L, no vowels that could make a word.</summary>
    public const string Alphabet = "23456789BCDFGHJKMNPQRSTVWXYZ";

    /// <summary>Characters of a code.</summary>
    public const int Length = 6;
}
