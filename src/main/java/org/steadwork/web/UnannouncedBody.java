package org.steadwork.web;

import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelInboundHandlerAdapter;
import io.netty.channel.ChannelPipeline;
import io.netty.handler.codec.http.HttpContent;
import io.netty.handler.codec.http.HttpRequest;
import io.netty.util.ReferenceCountUtil;

/**
 * Counts a body that comes in pieces (HTTP/1.1, {@code Transfer-Encoding: chunked}) and so says no length beforehand. Where it gets longer than
 * the server takes, the connection is cut: the framework's readers of forms keep all of it otherwise, and who sends without end reads no answer.
 */
final class UnannouncedBody extends ChannelInboundHandlerAdapter {

    private static final String DECODER = "httpDecoder";
    private static final String NAME = "steadwork-unannounced-body";

    private final long most;
    private long taken;
    private boolean cut;

    private UnannouncedBody(long most) {
        this.most = most;
    }

    /**
     * Watches what still comes on this connection. Call it on its event loop, while a request begins.
     *
     * @param most bytes a body may have
     */
    static void watch(ChannelPipeline connection, long most) {
        if (connection.get(NAME) == null) {
            connection.addAfter(DECODER, NAME, new UnannouncedBody(most));
        }
    }

    @Override
    public void channelRead(ChannelHandlerContext context, Object message) {
        if (message instanceof HttpRequest) {
            taken = 0;
        }
        if (message instanceof HttpContent piece) {
            taken += piece.content().readableBytes();
        }
        if (cut || taken > most) {
            ReferenceCountUtil.release(message);
            if (!cut) {
                cut = true;
                context.close();
            }
            return;
        }
        context.fireChannelRead(message);
    }
}
