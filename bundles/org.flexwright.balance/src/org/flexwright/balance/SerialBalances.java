package org.flexwright.balance;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

import org.flexwright.core.balance.BalanceConnection;
import org.flexwright.core.balance.BalanceListener;
import org.flexwright.core.balance.BalanceSettings;
import org.flexwright.core.balance.BalanceSource;
import org.osgi.service.component.annotations.Component;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;

/** Balances that write lines over a serial port: 8 bits, no parity, one stop bit, as most do. */
@Component(service = BalanceSource.class)
public final class SerialBalances implements BalanceSource {
    /** Id of this source. */
    public static final String ID = "balance.serial";
    private static final int BITS = 8;
    private static final int WAIT_MS = 300;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return Say.SERIAL_TITLE.with().text();
    }

    @Override
    public List<Place> places() {
        return Arrays.stream(SerialPort.getCommPorts()).map(p -> new Place(p.getSystemPortName(), p.getSystemPortName() + ", " + p.getDescriptivePortName())).toList();
    }

    @Override
    public BalanceConnection open(BalanceSettings settings, BalanceListener listener) {
        return new LineConnection(() -> new Port(settings), settings, listener).start();
    }

    /** A port that is open. */
    private static final class Port implements LineInput {
        private final SerialPort port;
        private final String name;

        Port(BalanceSettings settings) throws IOException {
            name = settings.place();
            try {
                port = SerialPort.getCommPort(name);
            } catch (SerialPortInvalidPortException e) {
                throw new IOException(Say.NO_PORT.with(name).text(), e);
            }
            port.setComPortParameters(settings.baud(), BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, WAIT_MS, 0);
            if (!port.openPort()) {
                throw new IOException(Say.BUSY_PORT.with(name).text());
            }
        }

        @Override
        public int read(byte[] buffer) throws IOException {
            int read = port.readBytes(buffer, buffer.length);
            if (read < 0) {
                throw new IOException(Say.GONE_PORT.with(name).text());
            }
            return read;
        }

        @Override
        public void close() {
            port.closePort();
        }
    }
}
