namespace Slantwise.Records.Roster;

/// <summary>Short codes for pupils: three signs and a check sign ("R7MK"), the same for the same school and order, telling nothing about the pupil.</summary>
/// <remarks>
/// The 23 signs leave out what is mistaken for another in handwriting (0 1 and the letters B G I O Q S U V Z) and the vowels, so that no code is a word.
/// 23 is prime: with the weights 1, 2, 3… the sum of all signs is a multiple of 23, which catches any one wrong sign and any two signs swapped.
/// Codes are numbered, not derived from names or ids: a code made from a name could be tried against a list of names.
/// </remarks>
public static class PupilCode
{
    /// <summary>The signs a made code consists of.</summary>
    public const string Signs = "CDFHJKLMNPRTWXY23456789";

    private const int Modulus = 23;

    // About the golden section of 23³, and no multiple of 23: neighbours in the numbering get codes that do not look alike.
    private const long Stride = 7519;

    /// <summary>A made code by its number.</summary>
    /// <param name="number">0 or more. The first 12 167 have four signs, the next have more.</param>
    /// <returns>A code unlike that of any other number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number below 0.</exception>
    public static string Of(long number)
    {
        if (number < 0) throw new ArgumentOutOfRangeException(nameof(number), number, "Codes are numbered from 0.");
        var length = 3;
        var count = 12_167L; // 23³
        while (number >= count)
        {
            number -= count;
            count *= Modulus;
            length++;
        }
        var rest = number * Stride % count;
        Span<int> values = stackalloc int[length + 1];
        var sum = 0;
        for (var i = 0; i < length; i++)
        {
            values[i] = (int)(rest % Modulus);
            rest /= Modulus;
            sum += (i + 1) * values[i];
        }
        values[length] = CheckFor(sum, length + 1);
        var code = new char[length + 1];
        for (var i = 0; i < code.Length; i++) code[i] = Signs[values[i]];
        return new string(code);
    }

    /// <summary>Whether a text is a code as <see cref="Of"/> makes them, so that a slip in reading or typing one can be noticed.</summary>
    /// <param name="code">Any text; case does not count.</param>
    /// <returns>False for the codes a school brings itself, which carry no check.</returns>
    public static bool IsMade(string code)
    {
        if (code.Length is < 4 or > 12) return false;
        var sum = 0;
        for (var i = 0; i < code.Length; i++)
        {
            var value = Signs.IndexOf(char.ToUpperInvariant(code[i]));
            if (value < 0) return false;
            sum += (i + 1) * value;
        }
        return sum % Modulus == 0;
    }

    // The check sign c solves sum + weight · c ≡ 0; the weight is below 23, so exactly one sign does.
    private static int CheckFor(int sum, int weight)
    {
        for (var check = 0; check < Modulus; check++)
        {
            if ((sum + weight * check) % Modulus == 0) return check;
        }
        return 0;
    }
}
