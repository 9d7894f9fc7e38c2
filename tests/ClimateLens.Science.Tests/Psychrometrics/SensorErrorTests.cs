using ClimateLens.Science.Psychrometrics;
using ClimateLens.Science.Quantities;
using ClimateLens.Science.Tests.CheckRows;

namespace ClimateLens.Science.Tests.Psychrometrics;

public class SensorErrorTests
{
    public static TheoryData<int, string> Table => CheckRow.Theory("sensor_error_table", _ => true);

    [Theory]
    [MemberData(nameof(Table))]
    public void SensorError_TabulatedAir_GivesEveryTabulatedColumn(int index, string source)
    {
        // Computed from the stated formula by a separate program, for a sensor of ±0.3 K and ±2 % RH and the WMO-No. 8 form.
        CheckRow row = CheckRow.Of("sensor_error_table")[index];
        Celsius t = new(row.Number("t_C"));
        RelativeHumidity rh = new(row.Number("rh_pct"));
        MagnusForm wmo = MagnusForm.Wmo8Water;
        PropagatedError dewPoint = SensorError.OfDewPoint(t, rh, new(0.3), new(2), wmo);
        PropagatedError margin = SensorError.OfMargin(t, rh, new(0.3), new(2), wmo);
        PropagatedError deficit = SensorError.OfDeficit(t, rh, new(0.3), new(2), wmo);
        double vpd = VapourPressureDeficit.OfAir(t, rh, wmo).Value;
        (string Column, double Actual, double Tolerance)[] columns =
        [
            ("td_C", DewPoint.FromRelativeHumidity(t, rh, wmo).Value, 6e-4),
            ("dTd_for_2pctRH", dewPoint.FromHumidity, 6e-4),
            ("dTd_for_0p3C", dewPoint.FromTemperature, 6e-4),
            ("u_Td_C", dewPoint.Combined, 6e-4),
            ("u_margin_T_minus_Td_C", margin.Combined, 6e-4),
            ("vpd_kPa", vpd, 6e-5),
            ("dVPD_for_2pctRH_kPa", deficit.FromHumidity, 6e-5),
            ("dVPD_for_0p3C_kPa", deficit.FromTemperature, 6e-5),
            ("u_VPD_kPa", deficit.Combined, 6e-5),
            ("u_VPD_pct", 100 * deficit.Combined / vpd, 0.06),
        ];
        Assert.All(columns, c => Assert.True(
            Math.Abs(c.Actual - row.Number(c.Column)) <= c.Tolerance, $"{row}: {c.Column} {c.Actual}; {source}"));
    }

    [Fact]
    public void SensorError_SmallSensorErrors_MatchTheFullChangeWithin5Percent()
    {
        for (double rh = 50; rh <= 97; rh += 1)
        {
            for (double t = 5; t <= 35; t += 5)
            {
                double dewPoint = DewPoint.FromRelativeHumidity(new(t), new(rh)).Value;
                double deficit = VapourPressureDeficit.OfAir(new(t), new(rh)).Value;
                PropagatedError error = SensorError.OfDewPoint(new(t), new(rh), new(0.3), new(2));
                PropagatedError vpd = SensorError.OfDeficit(new(t), new(rh), new(0.3), new(2));
                Near(DewPoint.FromRelativeHumidity(new(t), new(rh + 2)).Value - dewPoint, error.FromHumidity);
                Near(DewPoint.FromRelativeHumidity(new(t + 0.3), new(rh)).Value - dewPoint, error.FromTemperature);
                Near(VapourPressureDeficit.OfAir(new(t), new(rh + 2)).Value - deficit, vpd.FromHumidity);
                Near(VapourPressureDeficit.OfAir(new(t + 0.3), new(rh)).Value - deficit, vpd.FromTemperature);
            }
        }

        static void Near(double full, double firstOrder) => Assert.InRange(firstOrder / full, 0.95, 1.05);
    }

    [Fact]
    public void OfMargin_OneSensor_FeelsTemperatureLessThanTheDewPointDoes()
    {
        PropagatedError dewPoint = SensorError.OfDewPoint(new(18), new(90), new(0.3), new(2));
        PropagatedError margin = SensorError.OfMargin(new(18), new(90), new(0.3), new(2));
        Assert.True(Math.Abs(margin.FromTemperature) < 0.1 * dewPoint.FromTemperature);
        Assert.Equal(-dewPoint.FromHumidity, margin.FromHumidity);
    }

    [Fact]
    public void SensorError_NegativeSize_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SensorError.OfDewPoint(new(18), new(90), new(-0.3), new(2)));
}
