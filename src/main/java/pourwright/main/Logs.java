package pourwright.main;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.rolling.FixedWindowRollingPolicy;
import ch.qos.logback.core.rolling.RollingFileAppender;
import ch.qos.logback.core.rolling.SizeBasedTriggeringPolicy;
import ch.qos.logback.core.util.FileSize;
import java.nio.file.Path;
import org.slf4j.LoggerFactory;

/** The log beside the data: five files of ten megabytes at most, no names, no notes, no secrets. */
final class Logs {
  private static final int FILES = 4;
  private static final long FILE_BYTES = 10L * 1024 * 1024;

  private Logs() {}

  /** Writes what is worth a line into the folder from now on, besides what goes to the terminal. */
  static void into(Path folder) {
    if (!(LoggerFactory.getILoggerFactory() instanceof LoggerContext context)) {
      return;
    }
    String file = folder.resolve("pourwright.log").toString();
    PatternLayoutEncoder encoder = new PatternLayoutEncoder();
    encoder.setContext(context);
    encoder.setPattern("%d{yyyy-MM-dd'T'HH:mm:ss.SSSXXX} %-5level %logger{20} %msg%n");
    encoder.start();
    RollingFileAppender<ILoggingEvent> appender = new RollingFileAppender<>();
    appender.setContext(context);
    appender.setFile(file);
    appender.setEncoder(encoder);
    FixedWindowRollingPolicy window = new FixedWindowRollingPolicy();
    window.setContext(context);
    window.setParent(appender);
    window.setFileNamePattern(file + ".%i");
    window.setMaxIndex(FILES);
    window.start();
    SizeBasedTriggeringPolicy<ILoggingEvent> size = new SizeBasedTriggeringPolicy<>();
    size.setContext(context);
    size.setMaxFileSize(new FileSize(FILE_BYTES));
    size.start();
    appender.setRollingPolicy(window);
    appender.setTriggeringPolicy(size);
    appender.start();
    context.getLogger("pourwright").setLevel(Level.INFO);
    context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME).addAppender(appender);
  }
}
